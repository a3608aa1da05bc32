import { type Derivation, derivationStands } from '@clampwright/core/joint';
import { say } from '@clampwright/core/language';
import type { Stage } from '@clampwright/core/procedure';
import type { TorqueUnit } from '@clampwright/core/quantity';
import { useLanguage } from '../../app/language.ts';
import { Notice } from '../../parts/notice.tsx';
import { DerivedFigures } from './derived-figures.tsx';

interface KeptDerivationProps {
  readonly derivation: Derivation;
  readonly stages: readonly Stage[] | undefined;
  readonly torqueUnit: TorqueUnit;
}

/** How the target was worked out, under the word that it is an estimate. */
export function KeptDerivation({ derivation, stages, torqueUnit }: KeptDerivationProps) {
  const language = useLanguage();
  const isChanged = stages !== undefined && !derivationStands(derivation, stages);
  return (
    <>
      <Notice kind="caution" title={say(language, 'derived.estimate')}>
        <p>{say(language, 'derived.estimate-text')}</p>
        {isChanged ? <p>{say(language, 'derived.changed')}</p> : null}
      </Notice>
      <DerivedFigures derivation={derivation} torqueUnit={torqueUnit} />
    </>
  );
}
