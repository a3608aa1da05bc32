import type { ToldPull } from '@clampwright/core/line';
import type { CellState } from '@clampwright/core/record';
import { useEffect, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { newIdentity } from './identity.ts';
import { PluggedPort } from './plugged-port.tsx';
import { pluggedPull } from './plugged-pull.ts';
import type { PullSender } from './use-pull-sender.ts';

/** The position moves on a moment after the pull before was acknowledged. */
const SETTLE_MS = 60;

interface PluggedWrenchProps {
  readonly cell: CellState;
  readonly wrenchId: string;
  readonly sender: PullSender;
}

interface Heard {
  readonly pull: ToldPull;
  readonly way: 'serial' | 'keyboard';
}

/** A wrench at this very screen, whose pulls go to the next position. */
export function PluggedWrench({ cell, wrenchId, sender }: PluggedWrenchProps) {
  const { t } = useTranslation();
  const [heard, setHeard] = useState<readonly Heard[]>([]);

  // One pull at a time, each for the position whose turn it is once the one before is recorded.
  const [next] = heard;
  const isFree = sender.sending.kind === 'idle' || sender.sending.kind === 'refused';
  useEffect(() => {
    if (!next || !isFree) return undefined;
    const { pull, way } = next;
    const timer = setTimeout(() => {
      setHeard((before) => before.slice(1));
      sender.send(pluggedPull(pull, { id: newIdentity(), cell, wrenchId, way, nowIso: new Date().toISOString() }));
    }, SETTLE_MS);
    return () => clearTimeout(timer);
  }, [next, isFree, sender, cell, wrenchId]);

  return (
    <PluggedPort
      isFolded
      goesTo={t('plugged.listening-text')}
      onPull={(pull, way) => setHeard((before) => [...before, { pull, way }])}
    />
  );
}
