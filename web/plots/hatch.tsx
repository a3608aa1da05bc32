/** Lines across, for what must be told apart without its colour. */
export const Hatch = ({ id, kind }: { readonly id: string; readonly kind: 'outside' | 'first' | 'second' }) => (
  <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform={TURNS[kind]}>
    <rect width="7" height="7" className={`plot-ground-${kind}`} />
    <line x1="0" y1="0" x2="0" y2="7" className={`plot-hatch-${kind}`} />
  </pattern>
);

const TURNS = { outside: 'rotate(45)', first: 'rotate(90)', second: 'rotate(-45)' } as const;
