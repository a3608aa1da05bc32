import type { Block, Document } from '@clampwright/core/record';
import { collect } from './collect.ts';
import { setDrawing } from './drawing-block.ts';
import { setFacts, setFigures } from './facts-block.ts';
import { setNote } from './note-block.ts';
import { furnishPages, setTitle } from './page-furniture.ts';
import { setPlot } from './plot-block.ts';
import { setSeal } from './seal-block.ts';
import { Sheet } from './sheet.ts';
import { setTable } from './table-block.ts';
import { setHeading, setParagraph } from './text-block.ts';
import { loadFaces } from './type.ts';

/**
 * A document as PDF: tagged, typefaces embedded, marked as PDF/A-2a. The same document gives the same bytes.
 *
 * @source ISO 32000-1:2008; ISO 19005-2:2011 (marked as such; not proven by a validator)
 */
export async function renderPdf(document: Document): Promise<Uint8Array> {
  const sheet = new Sheet(document, await loadFaces());
  const bytes = collect(sheet.pdf);
  setTitle(sheet, document);
  for (const [index, block] of document.blocks.entries()) setBlock(sheet, document, block, document.blocks[index + 1]);
  furnishPages(sheet, document);
  sheet.root.end();
  sheet.pdf.end();
  return bytes;
}

function setBlock(sheet: Sheet, document: Document, block: Block, next: Block | undefined): void {
  switch (block.kind) {
    case 'heading':
      return setHeading(sheet, block.level, block.text, roomFor(next));
    case 'paragraph':
      return setParagraph(sheet, block.text);
    case 'facts':
      return block.size === 'big' ? setFigures(sheet, block.facts) : setFacts(sheet, block.facts);
    case 'table':
      return setTable(sheet, block, document.language);
    case 'drawing':
      return setDrawing(sheet, block);
    case 'plot':
      return setPlot(sheet, block, document.language);
    case 'note':
      return setNote(sheet, block.tone, block.title, block.lines);
    case 'seal':
      return setSeal(sheet, block);
    case 'pageBreak':
      return sheet.isFresh ? undefined : sheet.newPage();
  }
}

/** What a heading must have below it: what cannot be divided goes with it, of the rest a few lines. */
function roomFor(next: Block | undefined): number {
  switch (next?.kind) {
    case 'seal':
      return 270;
    case 'drawing':
      return 380;
    case 'plot':
      return next.picture.kind === 'plot' ? 310 : 120;
    case 'heading':
      return 110;
    case 'paragraph':
    case 'facts':
    case 'table':
    case 'note':
    case 'pageBreak':
    case undefined:
      return 70;
  }
}
