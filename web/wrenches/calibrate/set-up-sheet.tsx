import type { ReferenceStandard } from '@clampwright/core/wrench';
import { Link } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { FaultsProvider } from '../../forms/faults.tsx';
import { FormFigure, FormText } from '../../forms/fields.tsx';
import { Button } from '../../parts/button.tsx';
import { showDate } from '../../parts/dates.ts';
import { Notice } from '../../parts/notice.tsx';
import { useNow } from '../../parts/now.ts';
import { Select } from '../../parts/select.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import type { InSession } from './new-session.ts';
import type { SetUp } from './session.ts';
import { againstReference, readSetUp, SPREADS } from './set-up.ts';

interface SetUpSheetProps extends InSession {
  readonly references: readonly ReferenceStandard[];
  readonly onDrop: () => void;
}

/** Reference, certificate, conditions; an overdue reference cannot be chosen. */
export function SetUpSheet({ plan, session, references, onChange, onDrop }: SetUpSheetProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const [isAskedFor, setAskedFor] = useState(false);
  const { setUp } = session;
  const today = useNow().toISOString().slice(0, 10);
  const { value, faults } = readSetUp(setUp, today, language);
  const set = (part: Partial<SetUp>) => onChange({ ...session, setUp: { ...setUp, ...part } });
  const options = references.map((reference) => {
    const against = againstReference(reference, today, plan.targetsNm);
    const { id, name, serial, dueOn } = reference;
    return {
      value: id,
      isDisabled: against !== undefined,
      label: t(`care.reference-${against ?? 'usable'}`, { name, serial, on: showDate(dueOn, language) }),
    };
  });
  const begin = (event: FormEvent) => {
    event.preventDefault();
    setAskedFor(true);
    if (value) onChange({ ...session, at: 'found', found: { ...session.found, at: new Date().toISOString() } });
  };
  return (
    <Sheet title={t('care.set-up')}>
      {options.every(({ isDisabled }) => isDisabled) ? (
        <Notice kind="alarm" title={t('care.reference-none-usable')}>
          <Link to="/wrenches/references">{t('care.references')}</Link>
        </Notice>
      ) : null}
      <FaultsProvider faults={faults} isAskedFor={isAskedFor}>
        <form onSubmit={begin}>
          <Select
            size="wide"
            label={t('care.reference')}
            value={setUp.referenceId}
            options={[{ value: '', label: t('care.reference-choose') }, ...options]}
            problem={isAskedFor && setUp.referenceId === '' ? t('fault.needed') : undefined}
            onChange={(referenceId) => set({ referenceId })}
          />
          <div className="field-row">
            <FormText
              field="certificate"
              label={t('calibration.certificate')}
              value={setUp.certificate}
              onChange={(certificate) => set({ certificate })}
            />
            <FormText
              type="date"
              size="narrow"
              field="dueOn"
              label={t('calibration.due')}
              value={setUp.dueOn}
              onChange={(dueOn) => set({ dueOn })}
            />
            <FormText field="place" label={t('care.place')} value={setUp.place} onChange={(place) => set({ place })} />
            <FormFigure
              field="temperature"
              label={t('care.temperature')}
              hint={t('care.temperature-hint')}
              unit="°C"
              value={setUp.temperature}
              onChange={(temperature) => set({ temperature })}
            />
            <FormFigure
              field="humidity"
              label={t('care.humidity')}
              hint={t('care.humidity-hint')}
              unit="%"
              value={setUp.humidity}
              onChange={(humidity) => set({ humidity })}
            />
          </div>
          <details className="calibrate-spreads">
            <summary>{t('care.spreads')}</summary>
            <p className="soft">{t('care.spreads-about')}</p>
            <div className="field-row">
              {SPREADS.map((spread) => (
                <FormFigure
                  key={spread}
                  field={spread}
                  label={t(`care.${spread}`)}
                  unit="N·m"
                  value={setUp[spread]}
                  onChange={(text) => set({ [spread]: text })}
                />
              ))}
            </div>
          </details>
          <p className="soft">{t('care.kept-here')}</p>
          <div className="dialog-actions">
            <Button kind="primary" size="work" type="submit">
              {t('care.begin')}
            </Button>
            <Button kind="quiet" onPress={onDrop}>
              {t('care.drop')}
            </Button>
          </div>
        </form>
      </FaultsProvider>
    </Sheet>
  );
}
