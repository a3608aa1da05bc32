import type { JointContent } from '@clampwright/core/joint';
import type { Tool } from '@clampwright/core/wrench';

/** What a pull of the simulated wrench is to reach. */
export interface Target {
  readonly torqueNm: number;
  readonly angleDeg?: number;
  readonly angleFromNm?: number;
}

export const SERIAL = 'SIMULATED-1';

const typed = { form: 'limits', lower: '', upper: '', unit: 'N·m' } as const;
const around = (value: number): readonly [number, number, number] => [0.9 * value, value, 1.1 * value];

/** A joint that gives way as the target asks. */
export function simulatedJoint({ torqueNm, angleDeg, angleFromNm }: Target): JointContent {
  const [lowerNm, targetNm, upperNm] = around(torqueNm);
  const stage = {
    torque: { lowerNm, targetNm, upperNm, typed },
    rounds: [{ share: 1, order: { method: 'circular' as const } }],
  };
  return {
    name: 'simulated',
    fastener: { thread: 'M12', propertyClass: '10.9', description: '', lubricant: '', reuse: 'reusable' },
    layout: { kind: 'line', count: 1, pitchMm: 10 },
    stages: [
      angleDeg === undefined
        ? { kind: 'torque', ...stage }
        : { kind: 'torque-and-angle', ...stage, angle: angleWindow(angleDeg), angleFromNm },
    ],
    numbersSource: { kind: 'trial', text: 'simulated' },
    cautions: [],
    rework: { rule: 'loosen-and-repeat', underContinues: true, maximumAttempts: 3 },
    decisionRule: { kind: 'simple' },
    torqueUnit: 'N·m',
  };
}

function angleWindow(angleDeg: number) {
  const [lowerDeg, targetDeg, upperDeg] = around(angleDeg);
  return { lowerDeg, targetDeg, upperDeg, typed };
}

/** A wrench fine and long enough for a torque, and no more. */
export function simulatedTool(torqueNm: number): Tool {
  return {
    wrench: {
      id: '00000000-0000-7000-8000-000000000000',
      name: 'Simulated wrench',
      serial: SERIAL,
      type: 'I',
      class: 'C',
      lowestNm: 0.05 * torqueNm,
      highestNm: 1.6 * torqueNm,
      // Three or four digits, as such a display has.
      resolutionNm: 10 ** (Math.floor(Math.log10(torqueNm)) - 3),
      angleResolutionDeg: 0.5,
      leverMm: 400,
      connection: { kind: 'simulated', seed: 1 },
    },
  };
}
