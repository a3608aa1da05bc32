import type { CellState } from '@clampwright/core/record';
import type { Simulate } from '@clampwright/server/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { send } from '../app/api.ts';
import { useWho } from '../app/who.tsx';
import { catchUp, isCommandResult } from '../jobs/job-query.ts';
import { NobodyActs } from '../jobs/use-command.ts';
import { Button } from '../parts/button.tsx';
import { Select } from '../parts/select.tsx';
import { Trouble } from '../parts/states.tsx';
import { openSound } from './signals.ts';

type Fault = Simulate['fault'];
const FAULT_LIST = [
  'none',
  'crossed-thread',
  'already-tight',
  'stripped-thread',
  'yielded',
  'pulled-too-fast',
  'stopped-short',
  'over-run',
  'bottomed',
  'too-soft',
  'jerked',
  'slipped-socket',
  'two-pulls',
  'stick-slip',
  'turned-loose',
] as const satisfies readonly Fault[];

interface SimulatedWrenchProps {
  readonly jobId: string;
  readonly cell: CellState;
}

/** Pulls the simulated wrench on the position in hand, well or with a fault. */
export function SimulatedWrench({ jobId, cell }: SimulatedWrenchProps) {
  const { t } = useTranslation();
  const queries = useQueryClient();
  const who = useWho();
  const [fault, setFault] = useState<Fault>('none');
  const pull = useMutation({
    mutationFn: async () => {
      if (!(await who.ask())) throw new NobodyActs('nobody is signed in');
      const { jointRef, position } = cell.ref;
      return send('POST', `/jobs/${jobId}/simulate`, { jointRef, position, fault }, isCommandResult);
    },
    onSuccess: () => catchUp(queries, jobId),
  });
  return (
    <section className="simulated" aria-label={t('simulated.title')}>
      <div className="field-row">
        <Button
          kind="primary"
          size="work"
          isDisabled={pull.isPending}
          onPress={() => {
            openSound();
            pull.mutate();
          }}
        >
          {t(pull.isPending ? 'simulated.pulling' : 'simulated.pull')}
        </Button>
        <Select
          label={t('simulated.fault')}
          value={fault}
          onChange={setFault}
          options={FAULT_LIST.map((value) => ({ value, label: t(`simulated.faults.${value}`) }))}
        />
      </div>
      {pull.error && !(pull.error instanceof NobodyActs) ? <Trouble error={pull.error} /> : null}
    </section>
  );
}
