import { type Neighbours, orderPlanStands, type PlannedFigures } from '../joint/neighbours.ts';
import { say } from '../language/say.ts';
import { stepAt } from '../procedure/step.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showAngle, showTorque } from '../quantity/show-quantity.ts';
import { type ClosingRound, closingRounds, isUnsettled } from './closing.ts';
import type { Block, Fact, TableBlock } from './document.ts';
import { spans } from './document-attempts.ts';
import type { JobJoint } from './entry.ts';
import type { JointState } from './state.ts';

/** That targets by position come from a plan, and how it was made; nothing for a joint without one. */
export function planBlocks(joint: JobJoint, state: JointState, language: Language): readonly Block[] {
  const { neighbours, stages } = joint.joint.content;
  const table = targetTable(joint, state, language);
  if (!neighbours?.plan) return table ? [table] : [];
  const { plan, how, note } = neighbours;
  const stands = orderPlanStands(plan, stages);
  return [
    {
      kind: 'note',
      tone: 'caution',
      title: say(language, 'plan.estimate'),
      lines: [
        say(language, 'plan.estimate-text', { stage: plan.stage }),
        ...(stands ? [] : [say(language, 'plan.changed')]),
      ],
    },
    {
      kind: 'facts',
      size: 'normal',
      facts: [
        { label: say(language, 'plan.known-by'), value: say(language, `plan.by-${how}`) + (note ? `: ${note}` : '') },
        { label: say(language, 'plan.final-force'), value: `${figure(plan.finalN / 1000, language)}\u00a0kN` },
        ...(plan.wrenches > 1
          ? [
              {
                label: say(language, 'plan.wrenches'),
                value: say(language, 'plan.together', { wrenches: plan.wrenches }),
              },
            ]
          : []),
        ...figures(say(language, 'plan.planned'), plan.planned, neighbours, language),
        ...figures(say(language, 'plan.compared'), plan.compared, neighbours, language),
      ],
    },
    ...(table ? [table] : []),
  ];
}

const figure = (value: number, language: Language): string =>
  showNumber(Number(value.toPrecision(3)), language, { significant: 3 });

const percent = (share: number, language: Language): string => `${figure(share * 100, language)}\u00a0%`;

function figures(label: string, told: PlannedFigures, { model }: Neighbours, language: Language): readonly Fact[] {
  const value = say(language, 'plan.figures', {
    spread: percent(told.spread, language),
    pulls: told.pulls,
    minutes: figure(told.minutes, language),
    moment: figure(told.momentNm, language),
  });
  const stiff = model?.kind === 'ring' ? 'plan.figures-gap' : 'plan.figures-gap-bent';
  const gap = told.gapMm === undefined ? [] : [say(language, stiff, { gap: figure(told.gapMm, language) })];
  const noGap = told.whyNoGap ? [say(language, `plan.no-gap-${told.whyNoGap}`)] : [];
  const scatter =
    told.spread95 === undefined
      ? []
      : [say(language, 'plan.figures-scatter', { spread: percent(told.spread95, language) })];
  return [{ label, value: [[value, ...gap, ...noGap].join(', '), ...scatter].join('; ') }];
}

/** Every pull of the rounds that have targets of their own, in order. */
function targetTable({ ref, joint }: JobJoint, state: JointState, language: Language): TableBlock | undefined {
  const planned = state.steps.filter(({ torques }) => torques !== undefined);
  if (planned.length === 0) return undefined;
  const unit = joint.content.torqueUnit;
  const left = (title: string) => ({ title, align: 'left' as const });
  const right = (title: string) => ({ title, align: 'right' as const });
  return {
    kind: 'table',
    name: 'position-targets',
    caption: `${ref}: ${say(language, 'plan.targets')}`,
    columns: [
      right(say(language, 'plan.pull')),
      right(say(language, 'record.position')),
      right(say(language, 'record.lower-limit')),
      right(say(language, 'record.target')),
      right(say(language, 'record.upper-limit')),
      left(say(language, 'plan.share')),
    ],
    groups: planned.map((step) => ({
      title: say(language, 'plan.round', { stage: step.stage, round: step.round }),
      rows: step.order.map((position, index) => {
        const { torque } = stepAt(step, position);
        const whole = joint.content.stages[step.stage - 1]?.torque?.targetNm;
        const show = (torqueNm: number | undefined) =>
          torqueNm === undefined ? '–' : showTorque(torqueNm, unit, language);
        const cells = [
          String(index + 1),
          String(position),
          show(torque?.lowerNm),
          show(torque?.targetNm),
          show(torque?.upperNm),
          torque && whole ? percent(torque.targetNm / whole, language) : '–',
        ];
        return { cells: cells.map((text) => ({ text })), voice: 'plain' as const };
      }),
    })),
  };
}

/** How far each fastener still turned in the closing rounds, and whether anything moves still. */
export function closingBlocks({ ref }: JobJoint, state: JointState, language: Language): readonly Block[] {
  const pulled = closingRounds(state).filter(({ isPulled }) => isPulled);
  if (pulled.length === 0) return [];
  return [
    {
      kind: 'table',
      name: 'closing-rounds',
      caption: `${ref}: ${say(language, 'closing.title')}`,
      columns: [
        { title: say(language, 'record.position'), align: 'right' },
        { title: say(language, 'closing.turned'), align: 'right' },
      ],
      groups: pulled.map(({ step, turnedDeg }) => ({
        title: say(language, 'plan.round', { stage: step.stage, round: step.round }),
        rows: turnedDeg.map((deg, index) => ({
          cells: [
            { text: String(index + 1) },
            { text: deg === undefined ? say(language, 'closing.not-told') : showAngle(deg, language) },
          ],
          voice: 'plain' as const,
        })),
      })),
    },
    closingNote(pulled.at(-1)!, isUnsettled(state), language),
  ];
}

function closingNote(last: ClosingRound, hasNoFurther: boolean, language: Language): Block {
  const limit = showAngle(last.stillDeg, language);
  if (last.isStill) {
    return { kind: 'note', tone: 'notice', title: say(language, 'closing.still', { limit }), lines: [] };
  }
  const lines = [
    ...(last.moved.length > 0
      ? [say(language, hasNoFurther ? 'closing.moved-last' : 'closing.moved', { positions: spans(last.moved), limit })]
      : []),
    ...(last.untold.length > 0 ? [say(language, 'closing.untold', { positions: spans(last.untold) })] : []),
    ...(last.isWhole ? [] : [say(language, 'closing.unfinished')]),
    ...(hasNoFurther ? [say(language, 'closing.no-further')] : []),
  ];
  return { kind: 'note', tone: 'doubt', title: say(language, 'closing.due'), lines };
}
