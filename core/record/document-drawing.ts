import { say } from '../language/say.ts';
import { sayVerdict } from '../language/words.ts';
import { type DrawnSpot, type JointDrawing, jointDrawing } from '../layout/joint-drawing.ts';
import { verdictMark } from '../layout/verdict-mark.ts';
import type { Language } from '../quantity/language.ts';
import type { DrawingBlock, DrawingLabel, DrawingPath, Mark } from './document.ts';
import { spans } from './document-attempts.ts';
import { sayJoint } from './document-facts.ts';
import type { JobJoint } from './entry.ts';
import { POSITION_VERDICTS, type PositionVerdict, positionVerdicts } from './position-verdict.ts';
import type { JointState } from './state.ts';

/** The joint as seen from the tool side, on each position the mark of what stands there. */
export function jointDrawingBlock(joint: JobJoint, state: JointState, language: Language): DrawingBlock {
  const drawing = jointDrawing(joint.joint.content.layout);
  const verdicts = positionVerdicts(state);
  return {
    kind: 'drawing',
    caption: say(language, 'record.drawing', { joint: sayJoint(joint) }),
    alt: say(language, 'record.drawing-alt', { joint: sayJoint(joint), marks: marksInWords(verdicts, language) }),
    viewBox: drawing.viewBox,
    paths: [
      ...outline(drawing),
      ...drawing.spots.map((spot, index) => mark(spot, verdicts[index] ?? 'none', lineMm(drawing))),
    ],
    labels: drawing.spots.map((spot) => number(spot, drawing)),
    key: marksThatOccur(verdicts, language),
  };
}

/** Thickness of a line, so that it looks the same however large the joint. */
const lineMm = ({ viewBox }: JointDrawing): number => Math.max(viewBox.width, viewBox.height) / 350;

const outline = (drawing: JointDrawing): readonly DrawingPath[] =>
  drawing.outline.map((d) => ({ d, xMm: 0, yMm: 0, ink: 'quiet', filled: false, strokeMm: lineMm(drawing) }));

/** Marks are a little smaller than the heads, so that they stand apart. */
const MARK_SHARE = 1.7;

function mark({ xMm, yMm, radiusMm }: DrawnSpot, verdict: PositionVerdict, strokeMm: number): DrawingPath {
  const d = verdictMark(verdict, MARK_SHARE * radiusMm);
  if (verdict === 'none') return { d, xMm, yMm, ink: 'quiet', filled: false, strokeMm };
  return { d, xMm, yMm, ink: verdict, filled: true, strokeMm };
}

const number = ({ position, labelXMm, labelYMm }: DrawnSpot, { labelSizeMm }: JointDrawing): DrawingLabel => ({
  text: String(position),
  xMm: labelXMm,
  yMm: labelYMm,
  sizeMm: labelSizeMm,
  ink: 'line',
});

const marksThatOccur = (verdicts: readonly PositionVerdict[], language: Language): readonly Mark[] =>
  POSITION_VERDICTS.filter((verdict) => verdicts.includes(verdict)).map((verdict) => ({
    verdict,
    text: sayVerdict(verdict, language),
  }));

/** `within 1–6, 8; over 7`. */
const marksInWords = (verdicts: readonly PositionVerdict[], language: Language): string =>
  POSITION_VERDICTS.map((verdict) => ({
    verdict,
    positions: verdicts.flatMap((found, index) => (found === verdict ? [index + 1] : [])),
  }))
    .filter(({ positions }) => positions.length > 0)
    .map(({ verdict, positions }) => `${sayVerdict(verdict, language)} ${spans(positions)}`)
    .join('; ');
