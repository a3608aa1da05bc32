import type { Direction, Wrench } from '@clampwright/core/wrench';
import { useMutation } from '@tanstack/react-query';
import { useTranslation } from 'react-i18next';
import { having, send } from '../../app/api.ts';
import { useWho } from '../../app/who.tsx';
import { Button } from '../../parts/button.tsx';
import { Trouble } from '../../parts/states.tsx';
import type { Reading } from './session.ts';

interface SimulatedReadingProps {
  readonly wrench: Wrench;
  readonly direction: Direction;
  readonly targetNm: number;
  readonly onTake: (reading: Reading) => void;
}

interface Compared {
  readonly indicatedNm: number;
  readonly referenceNm: number;
}
const isCompared = having<Compared>('indicatedNm', 'referenceNm');

/** Lets the simulated wrench pull on a simulated reference. */
export function SimulatedReading({ wrench, direction, targetNm, onTake }: SimulatedReadingProps) {
  const { t } = useTranslation('lead');
  const who = useWho();
  const pull = useMutation({
    mutationFn: () => send('POST', `/toolbox/wrenches/${wrench.id}/compare`, { targetNm }, isCompared),
    onSuccess: ({ indicatedNm, referenceNm }) =>
      onTake({
        kind: 'reading',
        direction,
        targetNm,
        referenceNm,
        ...(wrench.type === 'I' ? { indicatedNm } : {}),
      }),
  });
  const press = async () => {
    if (await who.ask()) pull.mutate();
  };
  return (
    <>
      <Button isDisabled={pull.isPending} onPress={() => void press()}>
        {t('care.simulated')}
      </Button>
      {pull.isError ? <Trouble error={pull.error} /> : null}
    </>
  );
}
