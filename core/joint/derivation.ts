import { z } from 'zod';
import { ownRowSchema } from '../fastener/own-row.ts';
import type { Stage } from '../procedure/procedure.ts';
import { stepShownSchema } from './step-shown.ts';
import { warningSchema } from './warning.ts';

/** What a derived target was worked out from. */
export const derivationInputSchema = z.strictObject({
  thread: z.string().min(1),
  propertyClass: z.string().min(1).optional(),
  /** Where the material is one of the workshop's own instead of a property class. */
  yieldStrengthMPa: z.number().positive().optional(),
  threadFriction: z.number().gt(0).max(1),
  bearingFriction: z.number().gt(0).max(1),
  /** Share of the yield strength that the preload may reach while the bolt is twisted. */
  utilization: z.number().gt(0).max(1),
  /** Greatest over least preload of the way of tightening. */
  tighteningFactor: z.number().min(1).max(10),
});

/** The figures that a reader asks for first. */
export const derivationOutputSchema = z.strictObject({
  torqueNm: z.number().positive(),
  /** At that torque and the friction given. */
  preloadN: z.number().positive(),
  /** What the same torque may leave in the joint, by the tightening factor. */
  leastPreloadN: z.number().positive(),
  nutFactor: z.number().positive(),
  /** Fractions of the torque; absent in what was derived before they were kept. */
  shares: z.strictObject({ pitch: z.number(), thread: z.number(), bearing: z.number() }).optional(),
  /** Share of the yield strength that the upper limit of the window reaches at the friction given. */
  utilizationAtUpper: z.number().positive(),
});

/** How a target was worked out because the maker's figure is missing; kept with the joint and printed in the record. */
export const derivationSchema = z.strictObject({
  /** Its name in the registry of calculations. */
  calculation: z.string().min(1),
  input: derivationInputSchema,
  output: derivationOutputSchema,
  /** The window that was filled in from it, as it was rounded. */
  filled: z.strictObject({
    lowerNm: z.number().min(0),
    targetNm: z.number().positive(),
    upperNm: z.number().positive(),
  }),
  steps: z.array(stepShownSchema).max(40),
  /** What is doubtful in it; absent in what was derived before it was kept. */
  warnings: z.array(warningSchema).max(20).optional(),
  /** Of the formulas, and of the friction and the tightening factor that were chosen. */
  sources: z.array(z.string().min(1)).min(1).max(30),
  /** The workshop's own rows that were used, copied as they stood. */
  ownRows: z.array(ownRowSchema).max(4),
});
export type Derivation = z.infer<typeof derivationSchema>;

/** Room for the conversion of a typed figure to N·m and back. */
const LAST_DIGITS = 1e-9;

/** Whether a stage still has the window that the derivation filled in; typed over since then, it says nothing of it. */
export const derivationStands = ({ filled }: Derivation, stages: readonly Stage[]): boolean =>
  stages.some(
    ({ torque }) =>
      torque !== undefined &&
      (['lowerNm', 'targetNm', 'upperNm'] as const).every(
        (limit) => Math.abs(torque[limit] - filled[limit]) <= filled.upperNm * LAST_DIGITS,
      ),
  );
