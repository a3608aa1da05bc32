// Prints the tables of docs/traces.md: errors on made curves over a grid, and findings on simulated pulls.
// `node scripts/traces.js [CURVES] [PULLS]`: curves a row of the grid (100), pulls a fault (1000).
import { must, tool } from './steps.js';

must('building core and intake', tool('tsc'), ['-b', 'intake']);
const { readCurve } = await import('../core/dist/trace/index.js');
const { exactTorqueNm, HALF_SLOPE_DEG, madeCurve, PREVAILING_NM, SLOPE, SNUG_DEG } = await import(
  '../core/dist/trace/testing/made-curve.js'
);
const { measured } = await import('../core/dist/trace/testing/measured-curve.js');
const { FAULTS, modelFor } = await import('../intake/dist/simulated/index.js');
const { EXAMPLE_JOINT, EXAMPLE_TOOL } = await import('../intake/dist/simulated/example.js');
const { FOUND_AS, finder, PRACTICES } = await import('../intake/dist/simulated/testing/finder.js');

const CURVES = Number(process.argv[2] ?? 100);
const PULLS = Number(process.argv[3] ?? 1000);

const print = (...cells) => process.stdout.write(`| ${cells.join(' | ')} |\n`);

/** Root of the mean square, and the largest. */
function spread(errors) {
  const squares = errors.reduce((sum, error) => sum + error * error, 0);
  return [Math.sqrt(squares / errors.length), errors.reduce((most, error) => Math.max(most, Math.abs(error)), 0)];
}

const shown = (errors, unit) => {
  const [usual, worst] = spread(errors);
  return `${usual.toFixed(2)} (${worst.toFixed(2)}) ${unit}`;
};

function row(prevailingNm, stepDeg, measuring) {
  const torque = (deg) => exactTorqueNm(deg) - PREVAILING_NM + prevailingNm;
  const curve = madeCurve(stepDeg, 230, torque);
  const yieldNm = torque(HALF_SLOPE_DEG);
  const figures = Array.from(
    { length: CURVES },
    (_, seed) => readCurve(measured(curve, measuring, seed + 1), { yieldFraction: 0.5 }).figures,
  );
  print(
    `${(100 * measuring.noise).toFixed(1)} %`,
    `${(100 * measuring.resolution).toFixed(1)} %, ${measuring.angleStepDeg}°`,
    `${stepDeg}°`,
    `${prevailingNm} N·m`,
    shown(
      figures.map(({ snug }) => (snug?.angleDeg ?? 0) - SNUG_DEG),
      '°',
    ),
    shown(
      figures.map(({ slopeNmPerDeg = 0 }) => 100 * (slopeNmPerDeg / SLOPE - 1)),
      '%',
    ),
    shown(
      figures.map((one) => 100 * ((one.yield?.torqueNm ?? 0) / yieldNm - 1)),
      '%',
    ),
  );
}

print('noise', 'steps of torque and angle', 'sampled each', 'prevailing', 'snug', 'slope', 'torque at yield');
print('---:', '---', '---:', '---:', '---:', '---:', '---:');
for (const noise of [0, 0.002, 0.005, 0.01])
  for (const [resolution, angleStepDeg] of [
    [0, 0],
    [0.001, 0.1],
    [0.01, 1],
  ])
    for (const stepDeg of [0.05, 0.5])
      for (const prevailingNm of [0, 20]) row(prevailingNm, stepDeg, { noise, resolution, angleStepDeg });

const made = modelFor(EXAMPLE_JOINT, EXAMPLE_TOOL);
if (!made.ok) throw new Error('the example has a model');
process.stdout.write('\n');
print('pull', 'played', 'pulls', 'found', 'what else was told');
print('---', '---', '---:', '---:', '---');
for (const [practice, how] of Object.entries(PRACTICES)) {
  const found = finder(made.value, how);
  for (const fault of FAULTS) {
    const wanted = FOUND_AS[fault];
    let hits = 0;
    const others = new Map();
    for (let seed = 0; seed < PULLS; seed++) {
      const kinds = found(fault, seed);
      if (wanted === undefined ? kinds.length > 0 : kinds.includes(wanted)) hits++;
      for (const kind of kinds) if (kind !== wanted) others.set(kind, (others.get(kind) ?? 0) + 1);
    }
    const share = `${((100 * hits) / PULLS).toFixed(2)} %`;
    const told = [...others].map(([kind, count]) => `${kind} ${count}`).join(', ');
    print(practice, fault, PULLS, wanted === undefined ? `${share} told something` : share, told);
  }
}
