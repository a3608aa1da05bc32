import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { objectionWords } from './objection-words.ts';
import type { RankedWrench } from './tool-assessment.ts';

/** Each wrench that is refused, with every reason. */
export function RefusedWrenches({ ranked }: { readonly ranked: readonly RankedWrench[] }) {
  const { t } = useTranslation();
  const language = useLanguage();
  const [isOpen, setOpen] = useState(false);
  const refused = ranked.filter(({ objections }) => objections.length > 0);
  if (refused.length === 0) return null;
  return (
    <details className="tool-refused" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('tool.refused-which', { count: refused.length })}</summary>
      <ul>
        {(isOpen ? refused : []).map(({ tool: { wrench }, objections }) => (
          <li key={wrench.id}>
            <strong>{wrench.name}</strong>
            <ul className="caution-list">
              {[
                ...new Set(
                  objections.map(({ jobJoint, objection }) =>
                    objectionWords(objection, { t, language, unit: jobJoint.joint.content.torqueUnit }),
                  ),
                ),
              ].map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </details>
  );
}
