import { type LineDescription, lineDescriptionSchema, OWN_LINES } from '@clampwright/core/line';
import type { ShownDevice } from '@clampwright/server/contract';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useWho } from '../app/who.tsx';
import { Button, buttonClass } from '../parts/button.tsx';
import { FileDrop } from '../parts/file-drop.tsx';
import { Ledger, LedgerRow } from '../parts/ledger.tsx';
import { Notice } from '../parts/notice.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { Trouble } from '../parts/states.tsx';
import { lineDescriptionsQuery, useDeviceAct } from './devices.ts';
import { LineDialog } from './line-dialog.tsx';

interface LineDescriptionsProps {
  readonly devices: readonly ShownDevice[];
  readonly may: boolean;
}

/** How the lines of wrenches are read: made here, carried elsewhere as a file. */
export function LineDescriptions({ devices, may }: LineDescriptionsProps) {
  const { t } = useTranslation('lead');
  const who = useWho();
  const act = useDeviceAct();
  const { data = [] } = useQuery(lineDescriptionsQuery);
  const [open, setOpen] = useState<{ readonly description: LineDescription | undefined }>();
  const [isWrongFile, setWrongFile] = useState(false);
  const take = async (file: File): Promise<void> => {
    const description = descriptionIn(await file.text());
    setWrongFile(description === undefined);
    if (description && (await who.ask())) act.mutate({ kind: 'save-lines', description });
  };
  const heardBy = (name: string | undefined): readonly string[] =>
    devices
      .filter(({ device: { way } }) => way.kind === 'serial' && (name === undefined || way.lines === name))
      .flatMap(({ standing }) => standing.raw);
  return (
    <Sheet
      title={t('lines.title')}
      side={may ? <Button onPress={() => setOpen({ description: undefined })}>{t('lines.add')}</Button> : null}
    >
      <p>{t('lines.text')}</p>
      <Ledger label={t('lines.title')}>
        {data.map((description) => (
          <DescriptionRow key={description.name} description={description} onOpen={() => setOpen({ description })} />
        ))}
      </Ledger>
      {may ? (
        <FileDrop
          label={t('lines.import')}
          hint={t('lines.import-hint')}
          accept=".json"
          onFile={(file) => void take(file)}
        />
      ) : null}
      {isWrongFile ? <Notice kind="alarm" title={t('lines.import-wrong')} isLive /> : null}
      {act.isError ? <Trouble error={act.error} /> : null}
      {open ? (
        <LineDialog
          description={open.description}
          heard={heardBy(open.description?.name)}
          onClose={() => setOpen(undefined)}
        />
      ) : null}
    </Sheet>
  );
}

function descriptionIn(text: string): LineDescription | undefined {
  try {
    return lineDescriptionSchema.safeParse(JSON.parse(text)).data;
  } catch {
    // Not JSON at all: told like any other file that is no description.
    return undefined;
  }
}

interface DescriptionRowProps {
  readonly description: LineDescription;
  readonly onOpen: () => void;
}

function DescriptionRow({ description, onOpen }: DescriptionRowProps) {
  const { t } = useTranslation('lead');
  const { name, lines, torqueUnit, endOfPull } = description;
  const address = `data:application/json;charset=utf-8,${encodeURIComponent(JSON.stringify(description, null, 2))}`;
  return (
    <LedgerRow
      title={name}
      facts={[
        ...(name === OWN_LINES.name ? [t('lines.built-in')] : []),
        lines.map(({ says }) => t(`lines.says-${says}`)).join(', '),
        torqueUnit,
        t(`lines.end-${endOfPull.by}`),
      ]}
      side={
        <span className="device-acts">
          <Button label={t('lines.open-named', { name })} onPress={onOpen}>
            {t('lines.open')}
          </Button>
          <a className={buttonClass('quiet')} href={address} download={`${name}.lines.json`}>
            {t('lines.export')}
          </a>
        </span>
      }
    />
  );
}
