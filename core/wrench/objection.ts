/** What speaks against taking a tool for a joint, as data. Stage and round count from 1. */
export type Objection =
  | { readonly code: 'never-calibrated' }
  | { readonly code: 'found-off'; readonly calibratedOn: string }
  | { readonly code: 'calibration-overdue'; readonly dueOn: string; readonly daysOver: number }
  | {
      readonly code: 'impossible-adapter';
      readonly adapterMm: number;
      readonly adapterAngleDeg: number;
      readonly leverMm: number;
    }
  | { readonly code: 'shows-no-angle'; readonly stage: number }
  | {
      readonly code: 'below-range';
      readonly stage: number;
      readonly round: number;
      readonly settingNm: number;
      readonly lowestNm: number;
    }
  | {
      readonly code: 'above-range';
      readonly stage: number;
      readonly round: number;
      readonly settingNm: number;
      readonly highestNm: number;
    }
  | {
      readonly code: 'too-uncertain';
      readonly stage: number;
      readonly round: number;
      readonly expandedUncertaintyNm: number;
      /** Upper less lower limit, as the wrench shows it. */
      readonly widthNm: number;
    }
  | {
      readonly code: 'torque-too-coarse';
      readonly stage: number;
      readonly round: number;
      readonly resolutionNm: number;
      readonly widthNm: number;
    }
  | {
      readonly code: 'angle-too-coarse';
      readonly stage: number;
      readonly resolutionDeg: number;
      readonly widthDeg: number;
    };

/** What should be known of a tool that may be taken. */
export type Notice =
  | { readonly code: 'calibration-soon'; readonly dueOn: string; readonly daysLeft: number }
  | { readonly code: 'uncertainty-ratio'; readonly stage: number; readonly round: number; readonly ratio: number }
  | { readonly code: 'wind-up-unknown'; readonly stage: number };
