import { z } from 'zod';
import { ok } from '../failure/failure.ts';
import { fill } from '../language/catalogue.ts';
import { english } from '../language/english.ts';
import { showNumber } from '../quantity/show-number.ts';
import { type Finding, judgeQuantities, quantitiesSchema } from '../verdict/judge-quantities.ts';
import { verdictSchema } from '../verdict/verdict.ts';
import { calculation } from './calculation.ts';

const findingSchema = z.strictObject({
  code: z.enum(['inside', 'below-lower', 'above-upper', 'inside-guard-band', 'not-measured']),
  quantity: z.string(),
  value: z.number().optional(),
  limit: z.number().optional().describe('the limit that was missed or is too near'),
});

const figure = (number: number | undefined): string => (number === undefined ? '' : showNumber(number, 'en'));

/** The sentence of the catalogue, with every digit of the figures and the name that the quantity was given. */
function sentence({ code, quantity, value, limit }: Finding<string>): string {
  const what = quantity.charAt(0).toUpperCase() + quantity.slice(1);
  return fill(english[`reason.${code}`], { what, value: figure(value), limit: figure(limit) });
}

export const verdict = calculation({
  name: 'verdict',
  title: 'Judge measured quantities against their limits',
  cautions: [
    'Torque inside its limits does not prove the clamp force: friction and the run of the curve decide that too.',
  ],
  sources: ['JCGM 106:2012, 8.3: acceptance with a guard band', 'ILAC-G8:09/2019'],
  input: quantitiesSchema,
  output: z.strictObject({
    verdict: verdictSchema.describe('over before under before doubtful before within'),
    reasons: z.array(z.string()).readonly().describe('why, one sentence for each quantity'),
    findings: z.array(findingSchema).readonly().describe('the same as data'),
  }),
  example: {
    quantities: [
      { name: 'torque', value: 84.6, lower: 80, upper: 90 },
      { name: 'angle', value: 47, lower: 50, upper: 70 },
    ],
  },
  work: ({ quantities }) => {
    const judged = judgeQuantities<string>(quantities);
    if (!judged.ok) return judged;
    const { verdict: result, reasons } = judged.value;
    return ok({ verdict: result, reasons: reasons.map(sentence), findings: reasons });
  },
});
