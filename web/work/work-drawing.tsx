import type { JointContent } from '@clampwright/core/joint';
import type { JointState } from '@clampwright/core/record';
import { useTranslation } from 'react-i18next';
import type { PlaceInWork } from '../jobs/place-in-work.ts';
import { JointDrawing } from '../parts/joint-drawing.tsx';
import { useCellWords } from './use-cell-words.ts';

interface WorkDrawingProps {
  readonly content: JointContent;
  readonly joint: JointState;
  readonly place: PlaceInWork;
  /** The position in hand. */
  readonly position: number | undefined;
  readonly onPick: ((position: number) => void) | undefined;
}

/** The joint from the tool side, with the verdicts of the round in hand, the next position and the order to come. */
export function WorkDrawing({ content, joint, place, position, onPick }: WorkDrawingProps) {
  const { t } = useTranslation();
  const words = useCellWords();
  const next = joint.next?.position;
  return (
    <JointDrawing
      layout={content.layout}
      label={next === undefined ? t('work.drawing-done') : t('work.drawing', { position: next })}
      coming={place.coming}
      onPick={onPick}
      look={(each) => {
        const cell = place.cells[each - 1];
        return {
          mark: cell?.acceptedBy ? 'accepted' : cell?.verdict,
          isNext: each === next,
          isPicked: each === position && each !== next,
          name: t('order.position', { position: each, state: cell ? words(cell) : '' }),
        };
      }}
    />
  );
}
