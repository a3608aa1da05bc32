import { elasticInteraction } from '@clampwright/core/layout';
import { expect, it } from 'vitest';
import { returnLineFlange } from './return-line-flange.ts';

it('has the plan that its neighbours give: even in the end, and better than three star rounds', () => {
  const { model, plan } = returnLineFlange.neighbours ?? {};
  if (!model || !plan) throw new Error('a flange that is planned');
  const order = [...plan.rounds[0]!.order];
  const spreadOf = (targetsN: (number | number[])[]) => {
    const played = elasticInteraction({ model, order, targetsN, atOnce: 1, everyPull: false });
    return played.ok ? played.value.spread : Number.NaN;
  };
  const targetsN = plan.rounds.map(({ shares }) => order.map((position) => shares[position - 1]! * plan.finalN));
  expect(spreadOf(targetsN)).toBeCloseTo(plan.planned.spread, 6);
  expect(spreadOf([0.3, 0.7, 1].map((share) => share * plan.finalN))).toBeCloseTo(plan.compared.spread, 4);
});
