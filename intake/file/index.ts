export type { FileContext } from './context.ts';
export { type Doubt, type Guess, type GuessOptions, guessMapping } from './guess.ts';
export {
  COLUMN_FIELDS,
  type Column,
  type ColumnField,
  DELIMITERS,
  ENCODINGS,
  type Mapping,
  mappingSchema,
  WALL_FORMATS,
  type WrittenMapping,
} from './mapping.ts';
export type { Outcome, Refused } from './outcome.ts';
export { readPulls } from './read.ts';
export { isZone } from './zone.ts';
