import type { TighteningAngleRequest } from './request.ts';
import type { Stretch } from './stretch.ts';
import type { Target } from './target-of.ts';
import type { Tightening } from './tightening.ts';
import type { TorqueWindow } from './torque-window.ts';

/** A target with all that it was worked out from. */
export interface Worked extends Target {
  readonly request: TighteningAngleRequest;
  readonly tightening: Tightening;
  readonly stretch: Stretch;
  readonly window?: TorqueWindow | undefined;
}
