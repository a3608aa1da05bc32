import { showNumber } from '@clampwright/core/quantity';
import type { Direction, Wrench } from '@clampwright/core/wrench';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FaultsProvider } from '../../forms/faults.tsx';
import { FormFigure } from '../../forms/fields.tsx';
import { readerIn } from '../../forms/reader.ts';
import { Button } from '../../parts/button.tsx';
import type { LiveFigures } from './live/sources.ts';
import type { Reading } from './session.ts';
import { SimulatedReading } from './simulated-reading.tsx';

interface ReadingFormProps {
  readonly wrench: Wrench;
  readonly direction: Direction;
  readonly targetNm: number;
  /** What was told live for this comparison; typing afterwards counts. */
  readonly live: LiveFigures;
  readonly onTake: (reading: Reading) => void;
}

/** One comparison: what the reference shows; of a wrench that indicates also what it shows. */
export function ReadingForm({ wrench, direction, targetNm, live, onTake }: ReadingFormProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const indicates = wrench.type === 'I';
  const [indicated, setIndicated] = useState(showNumber(targetNm, language));
  const [reference, setReference] = useState('');
  const [told, setTold] = useState<LiveFigures>({});
  if (live !== told) {
    setTold(live);
    if (live.indicated !== told.indicated && live.indicated !== undefined)
      setIndicated(showNumber(live.indicated, language));
    if (live.reference !== told.reference && live.reference !== undefined)
      setReference(showNumber(live.reference, language));
  }
  const [isAskedFor, setAskedFor] = useState(false);
  const reader = readerIn(language);
  const indicatedNm = indicates ? reader.number('indicated', indicated, { isPositive: true }) : undefined;
  const referenceNm = reader.number('reference', reference, { isPositive: true });
  const take = (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    if (referenceNm === undefined || reader.faults.length > 0) return;
    onTake({
      kind: 'reading',
      direction,
      targetNm,
      referenceNm,
      ...(indicatedNm === undefined ? {} : { indicatedNm }),
    });
  };
  return (
    <FaultsProvider faults={reader.faults} isAskedFor={isAskedFor}>
      <form className="calibrate-reading" onSubmit={take}>
        <div className="field-row">
          {indicates ? (
            <FormFigure
              field="indicated"
              label={t('care.wrench-shows')}
              unit="N·m"
              value={indicated}
              onChange={setIndicated}
            />
          ) : null}
          <FormFigure
            field="reference"
            label={t('care.reference-shows')}
            unit="N·m"
            value={reference}
            onChange={setReference}
          />
        </div>
        <div className="dialog-actions">
          <Button kind="primary" size="work" type="submit">
            {t('care.take')}
          </Button>
          {wrench.connection.kind === 'simulated' ? (
            <SimulatedReading wrench={wrench} direction={direction} targetNm={targetNm} onTake={onTake} />
          ) : null}
        </div>
      </form>
    </FaultsProvider>
  );
}
