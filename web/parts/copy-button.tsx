import { type ReactNode, useState } from 'react';
import { useTranslation } from 'react-i18next';
import { Button } from './button.tsx';
import { Dialog } from './dialog.tsx';
import { StateWord } from './state-word.tsx';
import { TextField } from './text-field.tsx';

interface CopyButtonProps {
  readonly children: ReactNode;
  readonly text: () => string;
}

/** Copies a text. Where the page may not (plain text on the local net) it is laid out to be copied by hand. */
export function CopyButton({ children, text }: CopyButtonProps) {
  const { t } = useTranslation('lead');
  const [isCopied, setCopied] = useState(false);
  const [byHand, setByHand] = useState<string>();
  const copy = async () => {
    const copied = text();
    const done = await write(copied);
    setCopied(done);
    if (!done) setByHand(copied);
  };
  return (
    <>
      <Button onPress={() => void copy()}>{children}</Button>
      <span aria-live="polite">{isCopied ? <StateWord kind="good">{t('common.copied')}</StateWord> : null}</span>
      {byHand === undefined ? null : (
        <Dialog title={t('common.copy-by-hand')} size="wide" onClose={() => setByHand(undefined)}>
          <TextField isLong label={t('common.copy-text')} value={byHand} onChange={() => undefined} />
        </Dialog>
      )}
    </>
  );
}

async function write(text: string): Promise<boolean> {
  if (!globalThis.isSecureContext) return false;
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    // Refused by the browser or its owner: the caller lays the text out instead.
    return false;
  }
}
