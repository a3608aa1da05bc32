import type { CalculationName } from '@clampwright/core/calculations';
import { useRouter } from '@tanstack/react-router';
import { useTranslation } from 'react-i18next';
import { CopyButton } from '../parts/copy-button.tsx';
import type { Units } from './units.ts';

interface CopyButtonsProps {
  readonly name: CalculationName;
  readonly input: Readonly<Record<string, unknown>>;
  readonly output: unknown;
  readonly units: Units;
}

/** Takes a calculation along: as JSON with every digit, or as a link that brings its inputs. */
export function CopyButtons({ name, input, output, units }: CopyButtonsProps) {
  const { t } = useTranslation('lead');
  const router = useRouter();
  const link = () => {
    const { href } = router.buildLocation({ to: '/bench/$name', params: { name }, search: { input, units } });
    return new URL(href, location.href).href;
  };
  return (
    <div className="actions bench-copy">
      <CopyButton text={() => JSON.stringify({ calculation: name, input, output }, null, 2)}>
        {t('bench.copy-json')}
      </CopyButton>
      <CopyButton text={link}>{t('bench.copy-link')}</CopyButton>
    </div>
  );
}
