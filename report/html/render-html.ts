import type { Language } from '@clampwright/core/quantity';
import type {
  Block,
  Cell,
  Column,
  Document,
  DrawingBlock,
  DrawingLabel,
  DrawingPath,
  Fact,
  Row,
  RowGroup,
  TableBlock,
  Tone,
} from '@clampwright/core/record';
import { qrPath } from '../barcode.ts';
import { INK_COLOURS, TONE_INKS } from '../palette.ts';
import { type Html, html } from './escape.ts';
import { mark } from './mark.ts';
import { PLOT_HATCHES, plot } from './plot.ts';
import { STYLE_SHEET } from './style.ts';

/** A document as one HTML page that needs nothing else: no script, no image, nothing loaded from anywhere. */
export function renderHtml(document: Document): string {
  const page = html`<!doctype html>
<html lang="${document.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${document.title}: ${document.subject}</title>
<style>${{ markup: STYLE_SHEET }}</style>
</head>
<body>
${document.banner === undefined ? [] : html`<div class="banner">${document.banner}</div>`}
<h1>${document.title}</h1>
<p class="subject">${document.subject}</p>
${document.blocks.some(({ kind }) => kind === 'plot') ? PLOT_HATCHES : []}${document.blocks.map((content) => block(content, document.language))}
<footer>${document.reference}</footer>
</body>
</html>
`;
  return page.markup;
}

function block(content: Block, language: Language): Html {
  switch (content.kind) {
    case 'heading':
      return content.level === 1 ? html`<h2>${content.text}</h2>\n` : html`<h3>${content.text}</h3>\n`;
    case 'paragraph':
      return html`<p>${content.text}</p>\n`;
    case 'facts':
      return content.size === 'big'
        ? html`<dl class="figures">${content.facts.map(figureFact)}</dl>\n`
        : facts(content.facts);
    case 'table':
      return table(content);
    case 'drawing':
      return drawing(content);
    case 'plot':
      return plot(content, language);
    case 'note':
      return note(content.tone, content.title, content.lines);
    case 'seal':
      return html`<div class="seal">${facts(content.facts)}${barcode(content.barcode)}</div><p>${content.text}</p>\n`;
    case 'pageBreak':
      return html`<div class="break"></div>\n`;
  }
}

const facts = (list: readonly Fact[]): Html =>
  html`<dl>${list.map(({ label, value }) => html`<dt>${label}</dt><dd>${value}</dd>`)}</dl>\n`;

const figureFact = ({ label, value }: Fact): Html => html`<div><dt>${label}</dt><dd>${value}</dd></div>`;

function note(tone: Tone, title: string, lines: readonly string[]): Html {
  const items =
    lines.length > 1
      ? html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>`
      : lines.map((line) => html`<p>${line}</p>`);
  return html`<div class="note ink-${TONE_INKS[tone]}"><strong>${title}</strong>${items}</div>\n`;
}

function table({ caption, columns, groups }: TableBlock): Html {
  const head = columns.map((column) =>
    isBelow(column) ? html`` : html`<th scope="col"${side(column)}>${column.title}</th>`,
  );
  return html`<div class="wide" tabindex="0" role="region" aria-label="${caption || columns.map(({ title }) => title).join(', ')}"><table>${caption === '' ? [] : html`<caption>${caption}</caption>`}<thead><tr>${head}</tr></thead>
${groups.map((group) => rowGroup(group, columns))}</table></div>\n`;
}

const isBelow = (column: Column | undefined): boolean => column?.place === 'below';

const side = (column: Column | undefined): Html => (column?.align === 'right' ? html` class="right"` : html``);

const besideCount = (columns: readonly Column[]): number => columns.filter((column) => !isBelow(column)).length;

const rowGroup = ({ title, rows }: RowGroup, columns: readonly Column[]): Html =>
  html`<tbody>${title === '' ? [] : html`<tr><th scope="rowgroup" colspan="${besideCount(columns)}">${title}</th></tr>\n`}${rows.map((row) => tableRow(row, columns))}</tbody>\n`;

function tableRow({ cells, voice }: Row, columns: readonly Column[]): Html {
  const beside = cells.map((cell, index) =>
    isBelow(columns[index]) ? html`` : html`<td${side(columns[index])}>${cellContent(cell, voice)}</td>`,
  );
  const below = cells.filter((cell, index) => isBelow(columns[index]) && cell.text !== '');
  const openRow = (isFirst: boolean) =>
    html`<tr class="${voice}${isFirst && below.length > 0 ? ' open' : ''}${isFirst ? '' : ' below'}">`;
  const more = below.map(
    (cell) =>
      html`${openRow(false)}<td></td><td colspan="${besideCount(columns) - 1}">${cellContent(cell, voice)}</td></tr>\n`,
  );
  return html`${openRow(true)}${beside}</tr>\n${more}`;
}

const cellContent = (cell: Cell, voice: Row['voice']): Html =>
  cell.verdict ? html`${mark(cell.verdict, voice === 'quiet')}${cell.text}` : html`${cell.text}`;

function drawing({ caption, alt, viewBox, paths, labels, key }: DrawingBlock): Html {
  const box = `${viewBox.x} ${viewBox.y} ${viewBox.width} ${viewBox.height}`;
  const marks = key.map(({ verdict, text }) => html`<span>${mark(verdict, false)}${text}</span>`);
  return html`<figure><svg class="drawing" viewBox="${box}" role="img" aria-label="${alt}">${paths.map(drawnPath)}${labels.map(drawnLabel)}</svg>
<div class="key">${marks}</div><figcaption>${caption}</figcaption></figure>\n`;
}

function drawnPath({ d, xMm, yMm, ink, filled, strokeMm }: DrawingPath): Html {
  const colour = INK_COLOURS[ink];
  const at = xMm === 0 && yMm === 0 ? html`` : html` transform="translate(${xMm} ${yMm})"`;
  return filled
    ? html`<path d="${d}"${at} fill="${colour}"/>`
    : html`<path d="${d}"${at} fill="none" stroke="${colour}" stroke-width="${strokeMm}" stroke-linejoin="round"/>`;
}

const drawnLabel = ({ text, xMm, yMm, sizeMm, ink }: DrawingLabel): Html =>
  html`<text x="${xMm}" y="${yMm}" dy="0.357em" font-size="${sizeMm}" font-weight="600" text-anchor="middle" fill="${INK_COLOURS[ink]}">${text}</text>`;

function barcode({ content, alt }: { readonly content: string; readonly alt: string }): Html {
  const { d, sizeModules } = qrPath(content);
  return html`<svg viewBox="0 0 ${sizeModules} ${sizeModules}" role="img" aria-label="${alt}" shape-rendering="crispEdges"><path d="${d}"/></svg>`;
}
