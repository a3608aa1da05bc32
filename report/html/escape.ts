const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Markup that stands in the page as it is. */
export interface Html {
  readonly markup: string;
}

const CONTROL = /(?![\t\n\r])\p{Cc}/gu;

/** Text that stands for itself in HTML, in an element or in a quoted attribute. */
export const escaped = (text: string): string =>
  text.replaceAll(CONTROL, '\ufffd').replaceAll(/[&<>"']/g, (character) => ENTITIES[character] ?? character);

/**
 * Markup from a template: everything put in is escaped unless it is markup itself; lists are joined.
 *
 * @example html`<p>${'5 < 6'}</p>`.markup // <p>5 &lt; 6</p>
 */
export function html(
  parts: TemplateStringsArray,
  ...values: readonly (string | number | Html | readonly Html[])[]
): Html {
  const markup = parts.map((part, index) => part + (index < values.length ? put(values[index]!) : '')).join('');
  return { markup };
}

function put(value: string | number | Html | readonly Html[]): string {
  if (typeof value === 'string') return escaped(value);
  if (typeof value === 'number') return String(value);
  if ('markup' in value) return value.markup;
  return value.map(({ markup }) => markup).join('');
}
