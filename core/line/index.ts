export { checkOf } from './check.ts';
export {
  type FieldMeaning,
  LINE_CHECKS,
  LINE_DELIMITERS,
  type LineDescription,
  type LineField,
  type LineKind,
  lineDescriptionSchema,
} from './description.ts';
export {
  type LineEvent,
  type LinePull,
  type LineReader,
  type LineSample,
  LONGEST_LINE,
  lineReader,
  type UnreadableLines,
} from './line-reader.ts';
export { OWN_LINES } from './own-lines.ts';
export { compileLines, type LineFault, type LineRead, type LineSaid } from './read-line.ts';
export type { ToldFigure, ToldPull } from './told-pull.ts';
