import { type Check, check, describeSource } from '../check.ts';
import { numberFrom, refusal } from '../got.ts';

/** Only the ratio of the lengths counts, so inches and pounds stand here as printed. */
interface Example {
  readonly torque: number;
  readonly lever: number;
  readonly adapter: number;
  readonly angleDeg: number;
}

const inputOf = ({ torque, lever, adapter, angleDeg }: Example) => ({
  torqueNm: torque,
  leverMm: lever,
  adapterMm: adapter,
  adapterAngleDeg: angleDeg,
});

const setting = (name: string, example: Example, value: string, unit: string): Check =>
  check(name, () => numberFrom('wrench-setting', inputOf(example), 'settingNm'), { value, unit });

const applied = (name: string, { torque, ...rest }: Example, value: string, unit: string): Check => {
  const { torqueNm: _torque, ...lever } = inputOf({ torque, ...rest });
  return check(name, () => numberFrom('applied-torque', { readingNm: torque, ...lever }, 'torqueNm'), { value, unit });
};

const angled = (angleDeg: number, value: string): Check =>
  setting(`80 N·m, L 400, E 50, ${angleDeg}°`, { torque: 80, lever: 400, adapter: 50, angleDeg }, value, 'N·m');

export const ADAPTER_SOURCES = [
  describeSource('TM 9-2350-277-40&P, p. 44', 'read', [
    setting('40 lbf·ft, L 12, E 4', { torque: 40, lever: 12, adapter: 4, angleDeg: 0 }, '30', 'lbf·ft'),
  ]),
  describeSource('TM 1-1500-204-23-9, figure 8-16', 'read', [
    setting('300 lbf·in, L 10, E 4', { torque: 300, lever: 10, adapter: 4, angleDeg: 0 }, '214', 'lbf·in'),
  ]),
  describeSource('A helicopter maintenance manual, figures 20-1 and 20-2', 'read', [
    setting(
      '135 lbf·in, L 10, E 1.5, straight out',
      { torque: 135, lever: 10, adapter: 1.5, angleDeg: 0 },
      '117.39',
      'lbf·in',
    ),
    setting(
      '135 lbf·in, L 10, E 1.5, turned back',
      { torque: 135, lever: 10, adapter: 1.5, angleDeg: 180 },
      '158.82',
      'lbf·in',
    ),
  ]),
  describeSource('FAA AC 43.13-1B, figure 7-2', 'from memory', [
    setting(
      '30 lbf·in, L 10, E 1.5, straight out',
      { torque: 30, lever: 10, adapter: 1.5, angleDeg: 0 },
      '26.09',
      'lbf·in',
    ),
    setting(
      '30 lbf·in, L 10, E 1.5, turned back',
      { torque: 30, lever: 10, adapter: 1.5, angleDeg: 180 },
      '35.29',
      'lbf·in',
    ),
  ]),
  describeSource('TM 9-254, worked forward', 'read', [
    applied('set 60 lbf·in, L 12, E 2', { torque: 60, lever: 12, adapter: 2, angleDeg: 0 }, '70', 'lbf·in'),
  ]),
  // The manuals give the formula and the lengths; the figures are that formula worked by hand.
  describeSource('Formula of TM 9-254, figure 4-6, worked by hand', 'common practice', [
    setting('100 lbf·in, L 12, E 6', { torque: 100, lever: 12, adapter: 6, angleDeg: 0 }, '66.67', 'lbf·in'),
    setting(
      '100 lbf·ft, L 18, E 9: not 57.14 by the rule for a 12 in wrench',
      { torque: 100, lever: 18, adapter: 9, angleDeg: 0 },
      '66.6667',
      'lbf·ft',
    ),
    applied('reading 100 N·m, L 500, E 150', { torque: 100, lever: 500, adapter: 150, angleDeg: 0 }, '130', 'N·m'),
    angled(45, '73.5032'),
    angled(60, '75.2941'),
    angled(90, '80.0000'),
    angled(135, '87.7567'),
    angled(180, '91.4286'),
    check(
      'L 400, E 400 folded back over the handle',
      () => refusal('wrench-setting', inputOf({ torque: 50, lever: 400, adapter: 400, angleDeg: 180 })),
      { value: 'refused: adapterMm', unit: '' },
    ),
  ]),
];
