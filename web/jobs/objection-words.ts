import { type Language, showAngle, showNumber, showTorque, type TorqueUnit } from '@clampwright/core/quantity';
import type { Notice, Objection } from '@clampwright/core/wrench';
import type { TFunction } from 'i18next';
import { showDate } from '../parts/dates.ts';

interface Manner {
  readonly t: TFunction;
  readonly language: Language;
  readonly unit: TorqueUnit;
}

/** Why a tool is refused for a joint, as a sentence. */
export function objectionWords(objection: Objection, { t, language, unit }: Manner): string {
  const torque = (torqueNm: number) => showTorque(torqueNm, unit, language);
  const angle = (angleDeg: number) => showAngle(angleDeg, language);
  switch (objection.code) {
    case 'never-calibrated':
      return t('objection.never-calibrated');
    case 'found-off':
      return t('objection.found-off', { on: showDate(objection.calibratedOn, language) });
    case 'calibration-overdue':
      return t('objection.calibration-overdue', {
        on: showDate(objection.dueOn, language),
        count: objection.daysOver,
      });
    case 'impossible-adapter':
      return t('objection.impossible-adapter', {
        length: showNumber(objection.adapterMm, language),
        angle: angle(objection.adapterAngleDeg),
      });
    case 'shows-no-angle':
      return t('objection.shows-no-angle', { stage: objection.stage });
    case 'below-range':
      return t('objection.below-range', {
        stage: objection.stage,
        round: objection.round,
        setting: torque(objection.settingNm),
        limit: torque(objection.lowestNm),
      });
    case 'above-range':
      return t('objection.above-range', {
        stage: objection.stage,
        round: objection.round,
        setting: torque(objection.settingNm),
        limit: torque(objection.highestNm),
      });
    case 'too-uncertain':
      return t('objection.too-uncertain', {
        stage: objection.stage,
        round: objection.round,
        uncertainty: torque(objection.expandedUncertaintyNm),
        width: torque(objection.widthNm),
      });
    case 'torque-too-coarse':
      return t('objection.too-coarse', {
        stage: objection.stage,
        step: torque(objection.resolutionNm),
        width: torque(objection.widthNm),
      });
    case 'angle-too-coarse':
      return t('objection.too-coarse', {
        stage: objection.stage,
        step: angle(objection.resolutionDeg),
        width: angle(objection.widthDeg),
      });
  }
}

/** What should be known of a tool that may be taken, as a sentence. */
export function noticeWords(notice: Notice, { t, language }: Manner): string {
  switch (notice.code) {
    case 'calibration-soon':
      return t('notice.calibration-soon', { on: showDate(notice.dueOn, language) });
    case 'uncertainty-ratio':
      return t('notice.uncertainty-ratio', {
        stage: notice.stage,
        ratio: showNumber(notice.ratio, language, { decimals: 1 }),
      });
    case 'wind-up-unknown':
      return t('notice.wind-up-unknown', { stage: notice.stage });
  }
}
