import { compileLines, type LineDescription, type LineSaid } from '@clampwright/core/line';
import { showNumber } from '@clampwright/core/quantity';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { TextField } from '../parts/text-field.tsx';
import { useFaultWords } from './fault-words.ts';

interface LineTryProps {
  readonly description: LineDescription | undefined;
  /** What devices that use it sent last. */
  readonly heard: readonly string[];
}

const MOST_SHOWN = 20;

/** Raw lines as they arrive, or pasted, and what is understood of each. */
export function LineTry({ description, heard }: LineTryProps) {
  const { t } = useTranslation('lead');
  const [pasted, setPasted] = useState('');
  const said = useSaidWords();
  const faultWords = useFaultWords();
  const read = description && compileLines(description);
  const lines = [...pasted.split(/\r?\n/).filter((line) => line.trim() !== ''), ...heard].slice(-MOST_SHOWN);
  return (
    <>
      <TextField isLong label={t('lines.try')} hint={t('lines.try-hint')} value={pasted} onChange={setPasted} />
      {read && lines.length > 0 ? (
        <table className="line-try">
          <thead>
            <tr>
              <th scope="col">{t('lines.raw')}</th>
              <th scope="col">{t('lines.understood')}</th>
            </tr>
          </thead>
          <tbody aria-live="polite">
            {lines.map((line, at) => {
              const outcome = read(line);
              return (
                <tr key={at}>
                  <td>
                    <code className="line-raw">{line}</code>
                  </td>
                  <td>{outcome.ok ? said(outcome.said) : faultWords({ kind: 'line', ...outcome.fault })}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      ) : null}
    </>
  );
}

/** What a line says, in words. */
function useSaidWords(): (said: LineSaid) => string {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  const figure = (value: number): string => showNumber(Number(value.toPrecision(6)), language);
  return ({ says, torque, angle, number, position, serial, takenAt, elapsedS }) =>
    [
      t(`lines.says-${says}`),
      ...(torque ? [`${figure(torque.value)}\u00a0N·m`] : []),
      ...(angle ? [`${figure(angle.value)}°`] : []),
      ...(elapsedS === undefined ? [] : [`${figure(elapsedS)}\u00a0s`]),
      ...(number === undefined ? [] : [`${t('lines.means-number')} ${number}`]),
      ...(position === undefined ? [] : [`${t('lines.means-position')} ${position}`]),
      ...(serial === undefined ? [] : [serial]),
      ...(takenAt === undefined ? [] : [takenAt]),
    ].join(' · ');
}
