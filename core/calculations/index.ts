export type { Calculation } from './calculation.ts';
export { namesOwnRow } from './own-names.ts';
export {
  CALCULATIONS,
  type CalculationName,
  calculate,
  calculateMany,
  inputJsonSchema,
  outputJsonSchema,
} from './registry.ts';
export { SUBJECT_OF, SUBJECTS, type Subject } from './subjects.ts';
