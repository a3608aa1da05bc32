import type { CellState, Command } from '@clampwright/core/record';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useWho } from '../app/who.tsx';
import { ReasonDialog } from '../jobs/reason-dialog.tsx';
import { useCommand } from '../jobs/use-command.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';

interface LeadPromptProps {
  readonly jobId: string;
  readonly cell: CellState;
}

const WAYS = ['accept', 'loosened', 'fastener-replaced'] as const;
type Way = (typeof WAYS)[number];

/** The position waits for the lead: accepted as it is, or done again on the lead's order. */
export function LeadPrompt({ jobId, cell }: LeadPromptProps) {
  const { t } = useTranslation();
  const who = useWho();
  const ask = useCommand(jobId);
  const [way, setWay] = useState<Way>();
  const begin = async (chosen: Way) => {
    ask.reset();
    if (await who.ask()) setWay(chosen);
  };
  return (
    <Notice kind="caution" title={t('lead.title', { position: cell.ref.position })} isLive>
      <p>{t('lead.text', { count: cell.attemptsCounted })}</p>
      <div className="actions">
        {WAYS.map((each) => (
          <Button
            key={each}
            kind={each === 'accept' ? 'primary' : 'plain'}
            size="work"
            onPress={() => void begin(each)}
          >
            {t(`lead.way.${each}`)}
          </Button>
        ))}
      </div>
      {way ? (
        <ReasonDialog
          title={t(`lead.way.${way}`)}
          action={t('act.record')}
          usual={[]}
          needsLead
          error={ask.error}
          isBusy={ask.isPending}
          onSend={(reason, lead) =>
            ask.mutate({ command: commandFor(way, cell, reason), lead }, { onSuccess: () => setWay(undefined) })
          }
          onClose={() => setWay(undefined)}
        >
          <p>{t(`lead.way-text.${way}`)}</p>
        </ReasonDialog>
      ) : null}
    </Notice>
  );
}

function commandFor(way: Way, { ref }: CellState, reason: string): Command {
  if (way === 'accept') return { kind: 'accept', cell: ref, reason };
  return { kind: 'rework', jointRef: ref.jointRef, position: ref.position, how: way, reason };
}
