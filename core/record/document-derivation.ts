import { type Derivation, derivationStands } from '../joint/derivation.ts';
import type { StepShown } from '../joint/step-shown.ts';
import { sayDerivation } from '../language/derivation.ts';
import { sayMechanics } from '../language/mechanics/say.ts';
import { sayCitation } from '../language/mechanics/say-citation.ts';
import { sayRemark } from '../language/mechanics/say-remark.ts';
import { sayOwnRow } from '../language/own-rows.ts';
import { say } from '../language/say.ts';
import { derivedPictures } from '../picture/derived-target.ts';
import { formulaIn } from '../quantity/formula-in.ts';
import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import type { Block, TableBlock } from './document.ts';
import type { JobJoint } from './entry.ts';

/** How a derived target was worked out, under the word that it is an estimate; nothing for a maker's figure. */
export function derivationBlocks({ ref, joint }: JobJoint, language: Language): readonly Block[] {
  const { numbersSource, stages, torqueUnit } = joint.content;
  const { derivation } = numbersSource;
  if (!derivation) return [];
  return [
    {
      kind: 'note',
      tone: 'caution',
      title: say(language, 'derived.estimate'),
      lines: [
        say(language, 'derived.estimate-text'),
        ...(derivationStands(derivation, stages) ? [] : [say(language, 'derived.changed')]),
      ],
    },
    ...doubts(derivation.warnings, language),
    { kind: 'facts', size: 'normal', facts: sayDerivation(derivation, torqueUnit, language) },
    ...derivedPictures(derivation, torqueUnit, language).map((picture) => ({
      kind: 'plot' as const,
      name: picture.kind === 'shares' ? 'torque-shares' : 'torque-to-preload',
      about: ref,
      picture,
    })),
    ...(derivation.steps.length === 0 ? [] : [stepTable(ref, derivation.steps, language)]),
    {
      kind: 'note',
      tone: 'notice',
      title: say(language, 'derived.sources'),
      lines: [...derivation.sources, ...derivation.ownRows.map((row) => sayOwnRow(row, language))],
    },
  ];
}

const doubts = (warnings: Derivation['warnings'] = [], language: Language): readonly Block[] =>
  warnings.length === 0
    ? []
    : [
        {
          kind: 'note',
          tone: 'doubt',
          title: sayMechanics(language, 'derived.doubts'),
          lines: warnings.map((warning) => sayRemark(warning, language)),
        },
      ];

const stepTable = (ref: string, steps: readonly StepShown[], language: Language): TableBlock => ({
  kind: 'table',
  name: 'derivation',
  caption: sayMechanics(language, 'plot.reads', { name: ref, value: say(language, 'derived.title') }),
  columns: [
    { title: sayMechanics(language, 'derived.symbol'), align: 'left' },
    { title: sayMechanics(language, 'derived.formula'), align: 'left' },
    { title: sayMechanics(language, 'derived.value'), align: 'right' },
    { title: sayMechanics(language, 'derived.source'), align: 'left' },
    { title: sayMechanics(language, 'derived.with-numbers'), align: 'left', place: 'below' },
  ],
  groups: [{ title: '', rows: steps.map((step) => ({ cells: stepCells(step, language), voice: 'plain' })) }],
});

const stepCells = ({ symbol, formula, withNumbers, value, unit, source }: StepShown, language: Language) =>
  [
    symbol,
    formulaIn(formula, language),
    `${showNumber(Number(value.toPrecision(5)), language)}\u00a0${unit}`.trim(),
    sayCitation(source, language),
    formulaIn(withNumbers, language),
  ].map((text) => ({ text }));
