import { check, describeSource } from '../check.ts';
import { numberFrom } from '../got.ts';
import { PROCESS_SD, RISKS } from '../published/decisions.ts';

const conformity = (value: number, standardUncertainty: number, limits: Readonly<Record<string, number>>): number =>
  numberFrom('conformity', { value, standardUncertainty, ...limits }, 'probability');

const risk = (input: Readonly<Record<string, number>>, field: 'falseAccept' | 'falseReject'): number =>
  numberFrom('decision-risk', input, field);

/** Resistors of 1500 Ω ± 0.2 Ω, made with 0.12 Ω of scatter, measured with u = 0.04 Ω, guarded by w. */
const resistor = (w: number) => ({
  lower: -0.2,
  upper: 0.2,
  processMean: 0,
  processSd: 0.12,
  standardUncertainty: 0.04,
  acceptLower: -0.2 + w,
  acceptUpper: 0.2 - w,
});

const band = (factor: number): number => 1 - conformity(100 - factor, 0.5, { upper: 100 });

const limit = (input: Readonly<Record<string, unknown>>, field: 'lower' | 'upper' | 'guardBand'): number =>
  numberFrom('acceptance-limits', input, field);

export const DECISION_SOURCES = [
  describeSource('JCGM 106:2012, 7.3, worked examples', 'from memory', [
    check('breakdown voltage −5.47 V, u 0.05 V, at most −5.40 V', () => conformity(-5.47, 0.05, { upper: -5.4 }), {
      value: '0.92',
      unit: '',
    }),
    check('burst pressure 509.7 kPa, u 8.6 kPa, at least 490 kPa', () => conformity(509.7, 8.6, { lower: 490 }), {
      value: '0.99',
      unit: '',
    }),
  ]),
  describeSource('JCGM 106:2012, 8.3, worked example of a speed limit', 'from memory', [
    check(
      'speed that is above 100 km/h in 99.9 of 100 cases, u 2 %',
      // rejection: 100 lies by a guard band below; u is 2 % of the speed that is sought
      () =>
        100 /
        (1 - 0.02 * limit({ upper: 0, standardUncertainty: 1, rule: { kind: 'risk', maximum: 0.001 } }, 'guardBand')),
      { value: '107', unit: 'km/h' },
    ),
  ]),
  describeSource('JCGM 106:2012, 9.5, resistors (figures from memory)', 'computed with mpmath 1.3.0', [
    check('w = 0: consumer', () => risk(resistor(0), 'falseAccept'), { value: '0.01894220672', unit: '' }),
    check('w = 0: producer', () => risk(resistor(0), 'falseReject'), { value: '0.03720780018', unit: '' }),
    check('w = u: consumer', () => risk(resistor(0.04), 'falseAccept'), { value: '0.004334072222', unit: '' }),
    check('w = u: producer', () => risk(resistor(0.04), 'falseReject'), { value: '0.1146565784', unit: '' }),
    check('w = U: consumer', () => risk(resistor(0.08), 'falseAccept'), { value: '0.0004686335989', unit: '' }),
    check('w = U: producer', () => risk(resistor(0.08), 'falseReject'), { value: '0.2476696402', unit: '' }),
    check('w = −U: consumer', () => risk(resistor(-0.08), 'falseAccept'), { value: '0.06940461001', unit: '' }),
    check('w = −U: producer', () => risk(resistor(-0.08), 'falseReject'), { value: '0.000680600974', unit: '' }),
  ]),
  describeSource(
    'JCGM 106:2012, 9.5, risks over ratio and share of good ones',
    'computed with mpmath 1.3.0',
    RISKS.flatMap(([ratio, inTolerance, falseAccept, falseReject]) => {
      const input = {
        lower: -1,
        upper: 1,
        processMean: 0,
        processSd: PROCESS_SD[inTolerance] ?? Number.NaN,
        standardUncertainty: 1 / (2 * ratio),
      };
      return [
        check(`${ratio}:1, ${inTolerance} good: accepted wrongly`, () => risk(input, 'falseAccept'), {
          value: falseAccept,
          unit: '',
        }),
        check(`${ratio}:1, ${inTolerance} good: rejected wrongly`, () => risk(input, 'falseReject'), {
          value: falseReject,
          unit: '',
        }),
      ];
    }),
  ),
  describeSource('ILAC-G8:09/2019, guard bands and the risk on the acceptance limit', 'from memory', [
    check('no guard band', () => band(0), { value: '0.5', unit: '' }),
    check('w = 0.83 U', () => band(0.83), { value: '0.048457226267', unit: '' }),
    check('w = U', () => band(1), { value: '0.022750131948', unit: '' }),
    check('w = 1.5 U', () => band(1.5), { value: '0.001349898032', unit: '' }),
    check('w = 3 U', () => band(3), { value: '9.87e-10', unit: '', absolute: 5e-13, because: '1 less a share near 1' }),
  ]),
  describeSource('ILAC-G8:09/2019, deviation within ±0.003 mm, U 0.001 mm', 'read', [
    check(
      'acceptance limit',
      () =>
        limit(
          { lower: -0.003, upper: 0.003, standardUncertainty: 0.0005, rule: { kind: 'guarded', factor: 1 } },
          'upper',
        ),
      { value: '0.002', unit: 'mm' },
    ),
  ]),
  describeSource('quantiles of the normal distribution, one limit, by risk', 'from memory', [
    check(
      '5 %',
      () => limit({ upper: 0, standardUncertainty: 1, rule: { kind: 'risk', maximum: 0.05 } }, 'guardBand'),
      {
        value: '1.644853627',
        unit: 'u',
      },
    ),
    check(
      '2.5 %',
      () => limit({ upper: 0, standardUncertainty: 1, rule: { kind: 'risk', maximum: 0.025 } }, 'guardBand'),
      {
        value: '1.959963985',
        unit: 'u',
      },
    ),
  ]),
];
