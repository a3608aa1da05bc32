import type { Derivation } from '@clampwright/core/joint';
import { sayCitation, sayDerivation, sayMechanics, sayOwnRow, sayRemark } from '@clampwright/core/language';
import { derivedPictures } from '@clampwright/core/picture';
import { formulaIn, showNumber, type TorqueUnit } from '@clampwright/core/quantity';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../../app/language.ts';
import { Notice } from '../../parts/notice.tsx';
import { TitleBlock } from '../../parts/title-block.tsx';
import { PictureFigure } from '../../plots/picture-figure.tsx';

interface DerivedFiguresProps {
  readonly derivation: Derivation;
  readonly torqueUnit: TorqueUnit;
}

/** What went in, what came out, and the working to be opened. */
export function DerivedFigures({ derivation, torqueUnit }: DerivedFiguresProps) {
  const { t } = useTranslation('lead');
  const language = useLanguage();
  return (
    <div className="derived">
      {derivation.warnings && derivation.warnings.length > 0 ? (
        <Notice kind="caution" title={sayMechanics(language, 'derived.doubts')}>
          <ul className="caution-list">
            {derivation.warnings.map((warning) => (
              <li key={`${warning.field} ${warning.code}`}>{sayRemark(warning, language)}</li>
            ))}
          </ul>
        </Notice>
      ) : null}
      <TitleBlock cells={sayDerivation(derivation, torqueUnit, language)} />
      {derivedPictures(derivation, torqueUnit, language).map((picture) => (
        <PictureFigure key={picture.title} picture={picture} />
      ))}
      <details className="working">
        <summary>{t('derive.working')}</summary>
        <ol className="working-steps">
          {derivation.steps.map(({ symbol, formula, withNumbers, value, unit, source }) => (
            <li key={symbol}>
              <p className="working-formula">
                {symbol} = {formulaIn(formula, language)}
              </p>
              <p className="working-formula">
                = {formulaIn(withNumbers, language)} ={' '}
                {`${showNumber(Number(value.toPrecision(5)), language)}\u00a0${unit}`}
              </p>
              <p className="soft">{sayCitation(source, language)}</p>
            </li>
          ))}
        </ol>
      </details>
      <ul className="derived-sources">
        {[...derivation.sources, ...derivation.ownRows.map((row) => sayOwnRow(row, language))].map((source) => (
          <li key={source} className="soft">
            {source}
          </li>
        ))}
      </ul>
    </div>
  );
}
