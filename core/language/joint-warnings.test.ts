import { describe, expect, it } from 'vitest';
import { aJoint, torqueWindow } from '../joint/testing/a-joint.ts';
import { warnJoint } from '../joint/warn.ts';
import { convertTorque } from '../quantity/convert.ts';
import { LANGUAGES } from '../quantity/language.ts';
import { sayJointWarning } from './joint-warnings.ts';

const aimedAt = (targetNm: number) => {
  const joint = aJoint();
  const stages = joint.stages.map((stage) => ({ ...stage, torque: torqueWindow(targetNm * 0.95, targetNm * 1.05) }));
  return { ...joint, stages };
};

const said = (targetNm: number, language: (typeof LANGUAGES)[number]) => {
  const joint = aimedAt(targetNm);
  return warnJoint(joint).map((warning) => sayJointWarning(warning, joint.fastener, language));
};

describe('a doubtful torque in words', () => {
  // 140 N·m on M16 8.8 are 1239 lbf·in.
  const slipped = Math.round(convertTorque(140, 'N·m', 'lbf·in'));

  it.each([
    ['en', 'Was the figure in lbf·in? 1239 lbf·in, not N·m, uses'],
    ['de', 'War der Wert in lbf·in gemeint? 1239 lbf·in statt N·m'],
    ['fr', 'La valeur était-elle en lbf·in\u00a0? 1239 lbf·in, et non N·m'],
    ['es', '¿Estaba la cifra en lbf·in? 1239 lbf·in, y no N·m'],
  ] as const)('names lbf·in typed as N·m in %s', (language, words) => {
    expect(said(slipped, language)).toEqual([expect.stringContaining(words)]);
  });

  it.each(LANGUAGES)('leaves nothing unfilled in %s', (language) => {
    for (const torqueNm of [8, 260, 350, 500, 1239, 5000]) {
      expect(said(torqueNm, language).join(' ')).not.toMatch(/[{}]/);
    }
  });

  it('is not said of a usual torque', () => {
    expect(said(140, 'en')).toEqual([]);
  });
});
