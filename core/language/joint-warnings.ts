import type { FastenerSpec } from '../joint/joint.ts';
import type { JointWarning } from '../joint/warn.ts';
import { convertTorque } from '../quantity/convert.ts';
import type { Language } from '../quantity/language.ts';
import { readUnit } from '../quantity/read-unit.ts';
import { showNumber } from '../quantity/show-number.ts';
import { isTorqueUnit } from '../quantity/unit.ts';
import { say } from './say.ts';

type Slip = Omit<JointWarning['plausibility']['slips'][number], 'message' | 'taken'> & {
  readonly taken?: string | undefined;
};

/**
 * A doubtful torque in words, with the likeliest slip that would explain it.
 *
 * @param fastener of the joint that the warning is about
 */
export function sayJointWarning(
  { assessment, plausibility }: JointWarning,
  { thread }: FastenerSpec,
  language: Language,
): string {
  const { utilization, propertyClass, slips } = plausibility;
  const told = say(language, `warning.${assessment}`, {
    what: `${thread}\u00a0${propertyClass}`,
    lowest: percent(utilization.lowest, language),
    usual: percent(utilization.usual, language),
    highest: percent(utilization.highest, language),
  });
  const [slip] = slips;
  return slip ? `${told} ${saySlip(slip, language)}` : told;
}

/** What a doubtful torque may have been meant as, as a question. */
export function saySlip({ kind, meant, taken, torqueNm, utilization }: Slip, language: Language): string {
  const share = percent(utilization, language);
  switch (kind) {
    case 'unit':
      return say(language, 'warning.slip-unit', {
        meant,
        taken: taken ?? 'N·m',
        figure: figureIn(meant, torqueNm, language),
        percent: share,
      });
    case 'dry-figure':
      return say(language, 'warning.slip-dry-figure', { percent: share });
    case 'class':
      return say(language, 'warning.slip-class', { meant, percent: share });
    case 'size':
      return say(language, 'warning.slip-size', { meant, percent: share });
  }
}

const percent = (share: number, language: Language): string =>
  `${showNumber(share * 100, language, { decimals: 0 })}\u00a0%`;

/** The figure as it was typed, in the unit that was meant. */
function figureIn(meant: string, torqueNm: number, language: Language): string {
  const unit = readUnit(meant);
  const figure = unit.ok && isTorqueUnit(unit.value) ? convertTorque(torqueNm, 'N·m', unit.value) : torqueNm;
  return showNumber(Number(figure.toPrecision(4)), language);
}
