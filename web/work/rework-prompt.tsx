import type { CellState } from '@clampwright/core/record';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { ReasonDialog } from '../jobs/reason-dialog.tsx';
import { NobodyActs, useCommand } from '../jobs/use-command.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { Trouble } from '../parts/states.tsx';

interface ReworkPromptProps {
  readonly jobId: string;
  readonly cell: CellState;
  readonly how: 'loosened' | 'fastener-replaced';
}

/** Asks for loosening or a new fastener before the position is done again; one touch confirms it. */
export function ReworkPrompt({ jobId, cell, how }: ReworkPromptProps) {
  const { t } = useTranslation();
  const ask = useCommand(jobId);
  const [other, setOther] = useState(false);
  const { jointRef, position } = cell.ref;
  const reworked = (which: typeof how, reason: string) =>
    ask.mutate(
      { command: { kind: 'rework', jointRef, position, how: which, reason } },
      { onSuccess: () => setOther(false) },
    );
  const elseHow = how === 'loosened' ? 'fastener-replaced' : 'loosened';
  return (
    <Notice kind="caution" title={t(`rework.title.${how}`, { position })} isLive>
      <p>{t(`rework.text.${how}`)}</p>
      <div className="actions">
        <Button
          kind="primary"
          size="work"
          isDisabled={ask.isPending}
          onPress={() => reworked(how, t('rework.usual-reason'))}
        >
          {t(`rework.done.${how}`)}
        </Button>
        <Button isDisabled={ask.isPending} onPress={() => setOther(true)}>
          {t(`rework.other.${elseHow}`)}
        </Button>
      </div>
      {ask.error && !other && !(ask.error instanceof NobodyActs) ? <Trouble error={ask.error} /> : null}
      {other ? (
        <ReasonDialog
          title={t(`rework.other.${elseHow}`)}
          action={t('act.record')}
          usual={[t('rework.usual-reason'), t('rework.usual-damaged')]}
          error={ask.error}
          isBusy={ask.isPending}
          onSend={(reason) => reworked(elseHow, reason)}
          onClose={() => setOther(false)}
        />
      ) : null}
    </Notice>
  );
}
