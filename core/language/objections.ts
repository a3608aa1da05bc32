import type { Language } from '../quantity/language.ts';
import { showNumber } from '../quantity/show-number.ts';
import { showAngle, showTorque } from '../quantity/show-quantity.ts';
import type { TorqueUnit } from '../quantity/unit.ts';
import type { Notice, Objection } from '../wrench/objection.ts';
import { sayDate } from './dates.ts';
import { say } from './say.ts';

/** Says what speaks against taking a tool, in the unit of the work. */
export function sayObjection(objection: Objection, language: Language, torqueUnit: TorqueUnit): string {
  const torque = (torqueNm: number) => showTorque(torqueNm, torqueUnit, language);
  const angle = (angleDeg: number) => showAngle(angleDeg, language);
  const length = (lengthMm: number) => `${showNumber(lengthMm, language)}\u00a0mm`;
  const { code } = objection;
  switch (code) {
    case 'never-calibrated':
      return say(language, 'objection.never-calibrated');
    case 'found-off':
      return say(language, 'objection.found-off', { on: sayDate(objection.calibratedOn, language) });
    case 'calibration-overdue':
      return say(language, 'objection.calibration-overdue', { due: sayDate(objection.dueOn, language) });
    case 'impossible-adapter':
      return say(language, 'objection.impossible-adapter', {
        adapter: length(objection.adapterMm),
        angle: angle(objection.adapterAngleDeg),
        lever: length(objection.leverMm),
      });
    case 'shows-no-angle':
      return say(language, 'objection.shows-no-angle', { stage: objection.stage });
    case 'below-range': {
      const { stage, round, settingNm, lowestNm } = objection;
      return say(language, 'objection.below-range', {
        stage,
        round,
        setting: torque(settingNm),
        lowest: torque(lowestNm),
      });
    }
    case 'above-range': {
      const { stage, round, settingNm, highestNm } = objection;
      return say(language, 'objection.above-range', {
        stage,
        round,
        setting: torque(settingNm),
        highest: torque(highestNm),
      });
    }
    case 'too-uncertain': {
      const { stage, round, expandedUncertaintyNm, widthNm } = objection;
      return say(language, 'objection.too-uncertain', {
        stage,
        round,
        uncertainty: torque(expandedUncertaintyNm),
        width: torque(widthNm),
      });
    }
    case 'torque-too-coarse': {
      const { stage, round, resolutionNm, widthNm } = objection;
      return say(language, 'objection.torque-too-coarse', {
        stage,
        round,
        step: torque(resolutionNm),
        width: torque(widthNm),
      });
    }
    case 'angle-too-coarse': {
      const { stage, resolutionDeg, widthDeg } = objection;
      return say(language, 'objection.angle-too-coarse', { stage, step: angle(resolutionDeg), width: angle(widthDeg) });
    }
  }
}

/** Says what should be known of a tool although it may be taken. */
export function sayNotice(notice: Notice, language: Language): string {
  switch (notice.code) {
    case 'calibration-soon':
      return say(language, 'notice.calibration-soon', { due: sayDate(notice.dueOn, language) });
    case 'uncertainty-ratio': {
      const { stage, round, ratio } = notice;
      return say(language, 'notice.uncertainty-ratio', {
        stage,
        round,
        ratio: showNumber(ratio, language, { decimals: 1 }),
      });
    }
    case 'wind-up-unknown':
      return say(language, 'notice.wind-up-unknown', { stage: notice.stage });
  }
}
