import { useId } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from '../../parts/button.tsx';
import type { Steps } from './use-steps.ts';

/** Plays, halts, goes one on or back, or jumps: by finger, mouse or the arrow keys of the slider. */
export function StepControls({ steps }: { readonly steps: Steps }) {
  const { t } = useTranslation('lead');
  const id = useId();
  const { at, count, isPlaying } = steps;
  return (
    <div className="step-controls">
      <div className="actions">
        <Button isDisabled={at === 0} onPress={() => steps.goTo(at - 1)}>
          {t('steps.back')}
        </Button>
        <Button onPress={isPlaying ? steps.pause : steps.play}>{t(isPlaying ? 'steps.pause' : 'steps.play')}</Button>
        <Button isDisabled={at === count} onPress={() => steps.goTo(at + 1)}>
          {t('steps.forward')}
        </Button>
      </div>
      <label htmlFor={id} className="unseen">
        {t('steps.jump')}
      </label>
      <input
        id={id}
        type="range"
        className="step-slider"
        min={0}
        max={count}
        value={at}
        onChange={(event) => steps.goTo(Number(event.target.value))}
      />
      <p className="soft">{t('steps.at', { at, count })}</p>
    </div>
  );
}
