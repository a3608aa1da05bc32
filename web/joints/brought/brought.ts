import { z } from 'zod';

/* What a calculation on Bench brings into a joint, as the address of the editor carries it. What is not of its kind is left out. */

const figure = z.number().positive().optional().catch(undefined);
const text = z.string().min(1).optional().catch(undefined);

const derivationBegun = z.object({
  threadFriction: figure,
  bearingFriction: figure,
  utilization: figure,
  tighteningFactor: figure,
  tighteningMethod: text,
});

const windowBrought = z.object({ target: figure, percent: figure, lower: figure, upper: figure });

const stageBrought = z.object({
  kind: z.enum(['torque', 'angle', 'torque-and-angle']),
  /** N·m. */
  torque: windowBrought.optional().catch(undefined),
  /** Degrees. */
  angle: windowBrought.optional().catch(undefined),
  angleFromNm: figure,
});

const broughtSchema = z.object({
  /** Designation; of an own bolt that of its row. */
  thread: z.string().min(1),
  propertyClass: text,
  /** To be worked out once more in the joint, so that its working is kept there. */
  derive: derivationBegun.optional().catch(undefined),
  /** Figures that are filled in as they are. */
  stage: stageBrought.optional().catch(undefined),
  /** Where those figures come from, in words. */
  sourceText: text,
});

export type DerivationBegun = z.infer<typeof derivationBegun>;
export type WindowBrought = z.infer<typeof windowBrought>;
export type StageBrought = z.infer<typeof stageBrought>;
export type Brought = z.infer<typeof broughtSchema>;

/** Reads what an address holds; undefined where no thread is told. */
export const broughtIn = (value: unknown): Brought | undefined => broughtSchema.safeParse(value).data;
