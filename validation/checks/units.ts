import { unit } from 'mathjs';
import { check, describeSource } from '../check.ts';
import { numberFrom } from '../got.ts';
import { FACTORS_READ, FACTORS_REMEMBERED, NIST_FACTORS } from '../published/units.ts';

const converted = (value: number, from: string, to: string) => () =>
  numberFrom('convert', { value, from, to }, 'value');

const exactly = ([from, to, value]: readonly [string, string, string]) =>
  check(`1 ${from} in ${to}`, converted(1, from, to), {
    value,
    unit: to,
    relative: 1e-15,
    because: 'an exact decimal: only the last bit of a double may differ',
  });

const printed = ([from, to, value]: readonly [string, string, string]) =>
  check(`1 ${from} in ${to}`, converted(1, from, to), { value, unit: to });

/** Our unit and base unit beside the library's words for them. */
const PEER_UNITS = [
  ['cN.m', 'N.m', 'cN m', 'N m'],
  ['kN.m', 'N.m', 'kN m', 'N m'],
  ['lbf.ft', 'N.m', 'lbf ft', 'N m'],
  ['lbf.in', 'N.m', 'lbf in', 'N m'],
  ['kgf.m', 'N.m', 'kgf m', 'N m'],
  ['kgf.cm', 'N.m', 'kgf cm', 'N m'],
  ['kN', 'N', 'kN', 'N'],
  ['lbf', 'N', 'lbf', 'N'],
  ['kgf', 'N', 'kgf', 'N'],
  ['m', 'mm', 'm', 'mm'],
  ['in', 'mm', 'in', 'mm'],
  ['psi', 'MPa', 'psi', 'MPa'],
  ['rad', 'deg', 'rad', 'deg'],
] as const;

/** An independent library turns the same figures; both ways. */
const peers = PEER_UNITS.flatMap(([from, to, theirFrom, theirTo]) => {
  const isPsi = from === 'psi';
  const because = isPsi ? 'the library keeps the psi to eleven figures' : 'double arithmetic in another order';
  const one = (value: number, [ours, theirs]: readonly [readonly [string, string], readonly [string, string]]) =>
    check(`${value} ${ours[0]} in ${ours[1]}`, converted(value, ...ours), {
      value: String(unit(value, theirs[0]).toNumber(theirs[1])),
      unit: ours[1],
      relative: isPsi ? 1e-10 : 1e-14,
      because,
    });
  return [
    one(37.5, [
      [from, to],
      [theirFrom, theirTo],
    ]),
    one(0.62, [
      [to, from],
      [theirTo, theirFrom],
    ]),
  ];
});

export const UNIT_SOURCES = [
  describeSource('Definitions of pound, inch and standard gravity', 'read', FACTORS_READ.map(exactly)),
  describeSource('Definitions of pound, inch and standard gravity', 'from memory', FACTORS_REMEMBERED.map(exactly)),
  describeSource('NIST SP 811:2008, appendix B.8', 'from memory', NIST_FACTORS.map(printed)),
  describeSource('TM 5-3805-274-13&P, WP 0051: a pair of figures', 'read', [
    check('19 lbf.ft in N.m', converted(19, 'lbf.ft', 'N.m'), { value: '25.8', unit: 'N.m' }),
  ]),
  describeSource('Units of an independent library', 'computed with mathjs 15.2.0', peers),
];
