import { z } from 'zod';
import { jointCheckOf } from '../joint/margins/joint-check.ts';
import { marginSchema, notCheckedSchema } from '../joint/margins/margin.ts';
import { jointCheckRequestSchema } from '../joint/margins/request.ts';
import { stepShownSchema } from '../joint/step-shown.ts';
import { warningSchema } from '../joint/warning.ts';
import { remarkSchema } from '../language/mechanics/remark.ts';
import { calculation, MAKER_FIRST } from './calculation.ts';

const newtons = (what: string) => z.number().describe(`${what}, N`);

const output = z.strictObject({
  holds: z.boolean().describe('whether every check that was made holds; an estimate'),
  assemblyMinN: newtons('least preload that scatter leaves at assembly'),
  assemblyMaxN: newtons('greatest preload at assembly'),
  tighteningFactor: z.number().describe('α_A that was counted with'),
  embeddingUm: z.number().describe('what the surfaces give way, µm'),
  embeddingLossN: newtons('preload lost by it'),
  temperatureGainN: newtons('change of preload by warmth, above 0 where it tightens'),
  preloadMinN: newtons('least preload in service'),
  preloadMaxN: newtons('greatest preload in service'),
  loadFactor: z.number().describe('Φ_n, share of the axial load that the bolt feels'),
  clampMinN: newtons('least clamp force under the axial load; below 0 the joint opens'),
  boltMaxN: newtons('greatest force in the bolt'),
  margins: z.array(marginSchema).readonly().describe('each check with what is there and what may be'),
  notChecked: z.array(notCheckedSchema).readonly().describe('checks that want a figure more'),
  assumptions: z.array(remarkSchema).readonly(),
  warnings: z.array(warningSchema).readonly(),
  steps: z.array(stepShownSchema).readonly(),
});

export const jointCheck = calculation({
  name: 'joint-check',
  title: 'Preload after scatter, embedding and warmth, and the margins against all that may go wrong',
  cautions: [
    MAKER_FIRST,
    'Holds for one bolt in a joint clamped and loaded in line with it. Bending, prying, creep and impact are not counted.',
    'Structural, pressure and lifting work is checked by licensed people to the code in force.',
  ],
  sources: [
    'VDI 2230-1:2015, R1 to R12 (formulas from a secondary source, order of the steps from memory)',
    'VDI 2230-1:2003, table A9: limits of surface pressure (secondary table)',
    'Alexander, SAE 770420 (1977): stripping of engaged threads (formulas from a secondary source)',
    'ISO 898-2:1992, proof stress of nuts (from memory)',
    'ASME PCC-1, appendix O: stress on gaskets (from memory)',
  ],
  input: jointCheckRequestSchema,
  output,
  example: {
    thread: 'M12',
    propertyClass: '8.8',
    shank: [{ lengthMm: 20, diameterMm: 12 }],
    layers: [
      { thicknessMm: 25, outerDiameterMm: 40 },
      { thicknessMm: 15, outerDiameterMm: 40 },
    ],
    preloadN: 41_900,
    tighteningFactor: 1.8,
    threadFriction: 0.14,
    axialLoadN: 8000,
    shearLoadN: 800,
    slipFriction: 0.15,
    headPartGrade: 'S355',
    nutPartGrade: 'S355',
    nutClass: '8',
    innerTensileMPa: 800,
  },
  work: jointCheckOf,
});
