// Draws docs/pictures/order-spread.svg and prints its figures as rows for docs/order.md: `node scripts/order-figure.js`.
import { writeFileSync } from 'node:fs';
import { calculate } from '@clampwright/core/calculations';
import { layOutPlot } from '@clampwright/core/plot';
import { ROOT } from './steps.js';

const ROUNDS = [1, 2, 3, 4, 5];
const PAPER = { width: 330, height: 230, letter: 11 };
const GAP = 12;
const KEY_HEIGHT = 64;

/** Flanges that grow in thickness with their size; the hub holds them against twisting. */
const FLANGES = [
  { count: 8, boltCircleMm: 260, outerMm: 300, innerMm: 190, heightMm: 35 },
  { count: 16, boltCircleMm: 520, outerMm: 580, innerMm: 420, heightMm: 55 },
  { count: 32, boltCircleMm: 1040, outerMm: 1120, innerMm: 900, heightMm: 85 },
];
const GASKETS = [
  { name: 'soft gasket', gasketMPa: 400 },
  { name: 'stiff gasket', gasketMPa: 3000 },
];

const panels = GASKETS.flatMap((gasket) => FLANGES.map((flange) => panelOf(flange, gasket)));
const columns = FLANGES.length;
const width = columns * PAPER.width + (columns - 1) * GAP;
const height = 2 * PAPER.height + GAP + KEY_HEIGHT;
const drawn = panels.map(({ plot, title }, index) => {
  const x = (index % columns) * (PAPER.width + GAP);
  const y = Math.floor(index / columns) * (PAPER.height + GAP);
  return `<g transform="translate(${x} ${y})">${drawnPlot(plot, title)}</g>`;
});
const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="${PAPER.letter}" role="img" aria-label="Spread of the forces after one to five rounds, plain star against the planned rounds">
<style>
svg { color: #1d2226; background: #fbfaf7 }
@media (prefers-color-scheme: dark) { svg { color: #e8e6e1; background: #1b1e21 } }
text { fill: currentColor }
path, circle { fill: none; stroke: currentColor }
.grid { stroke-opacity: .15 } .soft { fill-opacity: .7 } .dashed { stroke-dasharray: 5 4 } .line { stroke-width: 1.8 }
.dot { fill: currentColor; stroke: none } .ring, .cross { stroke-width: 1.8 }
</style>
${drawn.join('\n')}
<g transform="translate(8 ${2 * PAPER.height + GAP + 14})">${keyLines()}</g>
</svg>
`;
writeFileSync(`${ROOT}/docs/pictures/order-spread.svg`, svg);
for (const { row } of panels) process.stdout.write(`${row}\n`);

function panelOf(flange, gasket) {
  const model = {
    kind: 'ring',
    ...flange,
    gasketOuterMm: flange.boltCircleMm - 30,
    gasketInnerMm: flange.boltCircleMm - 60,
    gasketThicknessMm: 3,
    gasketMPa: gasket.gasketMPa,
    hubN: 2e6,
    boltNPerMm: 834_545,
  };
  const { order } = valueOf('tightening-order', { layout: 'circle', count: flange.count, method: 'star' });
  const byRounds = ROUNDS.map((rounds) => {
    const request = { model, order, finalN: 100_000, rounds, frictionScatter: 0.25, draws: 400 };
    const { scatter } = valueOf('round-targets', request);
    return { planned: scatter[0], plain: scatter[1] };
  });
  const at = (read) => byRounds.map((one, index) => ({ x: index + 1, y: 100 * read(one) }));
  const title = `${flange.count} bolts, ${gasket.name}`;
  const plot = {
    x: { label: 'rounds', from: 0.8, to: 5.2, ticks: ROUNDS.map((round) => ({ at: round, text: String(round) })) },
    y: { label: 'spread, %', from: 0, to: 200 },
    marks: [
      { kind: 'line', name: 'plain', points: at(({ plain }) => plain.spreadOnPaper) },
      { kind: 'points', name: 'plain', sign: 'dot', points: at(({ plain }) => plain.spreadOnPaper) },
      { kind: 'line', name: 'plain, friction', isDashed: true, points: at(({ plain }) => plain.spreadMean) },
      { kind: 'points', name: 'planned', sign: 'cross', points: at(({ planned }) => planned.spreadOnPaper) },
      { kind: 'points', name: 'planned, friction', sign: 'ring', points: at(({ planned }) => planned.spreadMean) },
    ],
  };
  const percents = (read) => byRounds.map((one) => Math.round(100 * read(one))).join(', ');
  const row = `| ${title} | ${percents(({ plain }) => plain.spreadOnPaper)} | ${percents(({ plain }) => plain.spreadMean)} | ${percents(({ planned }) => planned.spreadMean)} |`;
  return { plot, title, row };
}

function valueOf(name, input) {
  const answer = calculate(name, input);
  if (!answer.ok) throw new Error(JSON.stringify(answer.failure));
  return answer.value;
}

function drawnPlot(plot, title) {
  const { frame, xTicks, yTicks, shapes } = layOutPlot(plot, PAPER, 'en');
  const { left, right, top, bottom } = frame;
  const { letter } = PAPER;
  return [
    `<text x="${left}" y="${1.2 * letter}" font-weight="bold">${title}</text>`,
    ...yTicks.map(({ at }) => `<path class="grid" d="M${left} ${at}H${right}"/>`),
    `<path d="M${left} ${top}V${bottom}H${right}"/>`,
    ...yTicks.map(
      ({ at, text }) => `<text class="soft" x="${left - 5}" y="${at}" dy=".35em" text-anchor="end">${text}</text>`,
    ),
    ...xTicks.map(
      ({ at, text }) => `<text class="soft" x="${at}" y="${bottom + 14}" text-anchor="middle">${text}</text>`,
    ),
    `<text class="soft" x="${left}" y="${2.6 * letter}">${plot.y.label}</text>`,
    `<text class="soft" x="${right}" y="${PAPER.height - 4}" text-anchor="end">${plot.x.label}</text>`,
    ...shapes.map(drawnShape),
  ].join('');
}

function drawnShape(shape) {
  if (shape.kind === 'line') return `<path class="line${shape.isDashed ? ' dashed' : ''}" d="${shape.path}"/>`;
  if (shape.kind === 'points') return `<path class="${shape.sign}" d="${shape.path}"/>`;
  throw new Error(`nothing draws ${shape.kind} here`);
}

function keyLines() {
  const lines = [
    ['<path class="line" d="M0 0H26"/>', 'plain star, targets alike and rising evenly, no friction'],
    ['<path class="line dashed" d="M0 0H26"/>', 'the same, friction ± 25 % (mean of 400 draws)'],
    ['<path class="cross" d="M9 -4L17 4M9 4L17 -4"/>', 'planned, no friction'],
    ['<circle class="ring" cx="13" r="4"/>', 'planned, friction ± 25 %'],
  ];
  return lines
    .map(([sign, words], index) => {
      const [x, y] = [(index % 2) * 430, Math.floor(index / 2) * 22];
      return `<g transform="translate(${x} ${y})">${sign}<text x="36" dy=".35em">${words}</text></g>`;
    })
    .join('');
}
