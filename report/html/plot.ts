import {
  type KeyLine,
  keyOf,
  layOutPlot,
  type Mark,
  type Part,
  type Picture,
  type PlotLayout,
  partBar,
  pictureInWords,
  type Shape,
  type Sign,
} from '@clampwright/core/plot';
import type { Language } from '@clampwright/core/quantity';
import { type PlotBlock, plotCaption } from '@clampwright/core/record';
import { PART_LOOKS, PLOT_COLOURS } from '../palette.ts';
import { type Html, html } from './escape.ts';
import { mark } from './mark.ts';

const PAPER = { width: 560, height: 300, letter: 13 };

/** Hatchings that plots refer to; stands once in the page. */
export const PLOT_HATCHES: Html = html`<svg class="hatches" aria-hidden="true"><defs>${hatch('outside')}${hatch('quiet')}</defs></svg>\n`;

function hatch(ink: 'outside' | 'quiet'): Html {
  return html`<pattern id="hatch-${ink}" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V6" stroke="${PLOT_COLOURS[ink]}" stroke-width="3"/></pattern>`;
}

/** A plot with its title above and its key below. */
export function plot(block: PlotBlock, language: Language): Html {
  const { picture } = block;
  return html`<figure class="plot"><figcaption>${plotCaption(block, language)}</figcaption>${pictured(picture, language)}</figure>\n`;
}

function pictured(picture: Picture, language: Language): Html {
  switch (picture.kind) {
    case 'plot':
      return plane(picture, language);
    case 'shares':
      return shares(picture, language);
    case 'bars':
      return bars(picture);
  }
}

function plane(picture: Extract<Picture, { kind: 'plot' }>, language: Language): Html {
  const { x, y, marks } = picture.plot;
  const layout = layOutPlot(picture.plot, PAPER, language);
  return html`<svg viewBox="0 0 ${PAPER.width} ${PAPER.height}" role="img" aria-label="${pictureInWords(picture, language)}">${axes(layout, x.label, y.label)}${layout.shapes.map(shape)}</svg>
<ul class="plot-key">${keyOf(marks).map(keyLine)}</ul>`;
}

function axes({ frame, xTicks, yTicks, height }: PlotLayout, xLabel: string, yLabel: string): Html {
  const { left, right, top, bottom } = frame;
  const { letter } = PAPER;
  return html`${yTicks.map(({ at }) => html`<path class="grid" d="M${left} ${at}H${right}"/>`)}${xTicks.map(({ at }) => html`<path class="grid" d="M${at} ${top}V${bottom}"/>`)}<path class="axis" d="M${left} ${top}V${bottom}H${right}"/>${yTicks.map(({ at, text }) => html`<text class="soft" x="${left - letter / 2}" y="${at}" dy="0.35em" text-anchor="end">${text}</text>`)}${xTicks.map(({ at, text }) => html`<text class="soft" x="${at}" y="${bottom + 1.2 * letter}" text-anchor="middle">${text}</text>`)}<text x="0" y="${letter}">${yLabel}</text><text x="${right}" y="${height - 0.35 * letter}" text-anchor="end">${xLabel}</text>`;
}

function shape(drawn: Shape): Html {
  switch (drawn.kind) {
    case 'line':
      return html`<path class="${drawn.isDashed ? 'line dashed' : 'line'}" d="${drawn.path}"/>`;
    case 'band':
    case 'bars':
      return html`<path class="${drawn.isHatched ? 'outside' : drawn.kind}" d="${drawn.path}"/>`;
    case 'window':
      return html`<path class="window" d="${drawn.path}"/>`;
    case 'points':
      return html`<path class="whiskers" d="${drawn.whiskers}"/><path class="${drawn.sign}" d="${drawn.path}"/>`;
    case 'limit':
      return html`<path class="axis" d="${drawn.path}"/>${tag(drawn.number, drawn.x, drawn.y, 1)}`;
    case 'point':
      return html`<circle class="ring" cx="${drawn.x}" cy="${drawn.y}" r="4"/>${tag(drawn.number, drawn.label.x, drawn.label.y, TAG)}`;
  }
}

const TAG = 8;

const tag = (number: number, x: number, y: number, corner: number): Html =>
  html`<rect class="tag" x="${x - TAG}" y="${y - TAG}" width="${2 * TAG}" height="${2 * TAG}" rx="${corner}"/><text class="number" x="${x}" y="${y}" dy="0.35em" text-anchor="middle">${number}</text>`;

const keyLine = ({ mark: keyed, number }: KeyLine): Html =>
  html`<li><svg viewBox="0 0 26 18" aria-hidden="true">${swatch(keyed, number)}</svg><span>${keyed.name}${keyed.reads === undefined ? [] : html`: <strong>${keyed.reads}</strong>`}</span></li>`;

const BOX = 'M1 2H25V16H1Z';
const RING = 'M9 9A4 4 0 0 1 17 9A4 4 0 0 1 9 9Z';
const SIGNS: Readonly<Record<Sign, string>> = { dot: RING, ring: RING, cross: 'M9 5L17 13M9 13L17 5' };

function swatch(keyed: Mark, number: number | undefined): Html {
  switch (keyed.kind) {
    case 'line':
      return html`<path class="${keyed.isDashed ? 'line dashed' : 'line'}" d="M1 9H25"/>`;
    case 'band':
    case 'bars':
      return html`<path class="${keyed.isHatched ? 'outside' : keyed.kind}" d="${BOX}"/>`;
    case 'window':
      return html`<path class="window" d="${BOX}"/>`;
    case 'points':
      return html`<path class="${keyed.sign}" d="${SIGNS[keyed.sign]}"/>`;
    case 'limit':
    case 'point':
      return tag(number ?? 0, 13, 9, keyed.kind === 'point' ? TAG : 1);
  }
}

function shares(picture: Extract<Picture, { kind: 'shares' }>, language: Language): Html {
  const { parts } = picture;
  const laid = partBar(
    parts.map(({ share }) => share),
    558,
  );
  const drawn = laid.map(({ left, width }, index) => part(index, left + 1, width, 36));
  const key = parts.map(
    ({ name, text }, index) =>
      html`<li><svg viewBox="0 0 26 18" aria-hidden="true">${part(index, 1, 24, 16)}</svg><span>${name} <strong>${text}</strong></span></li>`,
  );
  return html`<svg viewBox="0 0 560 38" role="img" aria-label="${pictureInWords(picture, language)}">${drawn}</svg>
<ul class="plot-key">${key}</ul>`;
}

function part(index: number, left: number, width: number, height: number): Html {
  const { ground, isHatched } = PART_LOOKS[index % PART_LOOKS.length]!;
  const box = `M${left} 1h${width}v${height}h${-width}z`;
  const lines = isHatched ? html`<path d="${box}" fill="url(#hatch-quiet)"/>` : html``;
  return html`<path d="${box}" fill="${ground}"/>${lines}<path class="edge" d="${box}"/>`;
}

const bars = ({ parts, whole = 1, limit }: Extract<Picture, { kind: 'bars' }>): Html =>
  html`<ul class="plot-bars">${parts.map((one) => bar(one, whole, limit?.at))}</ul>${limit ? html`<p class="soft"><svg class="mark" viewBox="0 0 10 10" aria-hidden="true"><path class="limit" d="M4 0H6V10H4Z"/></svg>${limit.text}</p>` : []}`;

const WIDE = 560;

function bar({ name, share, text, note, verdict }: Part, whole: number, limit: number | undefined): Html {
  const along = (value: number) => Math.max(0, Math.min(1, value / whole)) * WIDE;
  const look = verdict !== undefined && verdict !== 'within' ? 'outside' : 'bars';
  return html`<li><span class="words"><span>${verdict ? mark(verdict, false) : []}${name}</span><strong>${text}</strong></span><svg viewBox="0 -3 ${WIDE} 18" preserveAspectRatio="none" aria-hidden="true"><path class="well" d="M0 0H${WIDE}V12H0Z"/><path class="${look}" d="M0 0H${along(share)}V12H0Z"/>${limit === undefined ? [] : html`<path class="limit" d="M${along(limit) - 1.5} -3h3v18h-3z"/>`}</svg>${note === undefined ? [] : html`<span class="soft">${note}</span>`}</li>`;
}
