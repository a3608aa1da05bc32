import type { JointContent } from '@clampwright/core/joint';
import { showNumber } from '@clampwright/core/quantity';
import { type JointState, predictedForces } from '@clampwright/core/record';
import { useMemo, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import type { PlaceInWork } from '../jobs/place-in-work.ts';
import { JointDrawing } from '../parts/joint-drawing.tsx';
import { Tick } from '../parts/tick.tsx';
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
  const [areForcesShown, setForcesShown] = useState(false);
  const language = useLanguage();
  const predicted = useMemo(
    () => (content.neighbours?.plan ? predictedForces(content, joint) : undefined),
    [content, joint],
  );
  const show = (forceN: number) => showNumber(forceN / 1000, language, { significant: 3 });
  const forceOf = (each: number) => (areForcesShown ? predicted?.forcesN[each - 1] : undefined);
  const drawing = (
    <JointDrawing
      layout={content.layout}
      label={next === undefined ? t('work.drawing-done') : t('work.drawing', { position: next })}
      coming={place.coming}
      onPick={onPick}
      look={(each) => {
        const cell = place.cells[each - 1];
        const forceN = forceOf(each);
        const state = cell ? words(cell) : '';
        return {
          force:
            forceN === undefined || !predicted ? undefined : { share: forceN / predicted.finalN, text: show(forceN) },
          mark: cell?.acceptedBy ? 'accepted' : cell?.verdict,
          isNext: each === next,
          isPicked: each === position && each !== next,
          name: t('order.position', {
            position: each,
            state: forceN === undefined ? state : `${state}, ${t('forces.at', { force: show(forceN) })}`,
          }),
        };
      }}
    />
  );
  if (!predicted) return drawing;
  return (
    <>
      {drawing}
      <Tick isChosen={areForcesShown} onChange={setForcesShown}>
        {t('forces.show')}
      </Tick>
      {areForcesShown ? <p className="soft small">{t('forces.estimate', { whole: show(predicted.finalN) })}</p> : null}
    </>
  );
}
