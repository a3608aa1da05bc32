import type { JobJoint } from '@clampwright/core/record';
import type { ImportResult } from '@clampwright/server/contract';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { buttonClass } from '../parts/button.tsx';
import { FileDrop } from '../parts/file-drop.tsx';
import { Select } from '../parts/select.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { Loading, Trouble } from '../parts/states.tsx';
import { ColumnsSheet } from './columns-sheet.tsx';
import { DoubtList } from './doubt-list.tsx';
import { FileSheet } from './file-sheet.tsx';
import type { Guess } from './mapping.ts';
import { formOf, type MappingForm, readMapping } from './mapping-form.ts';
import { OutcomeSheet } from './outcome-sheet.tsx';
import { SaveMapping } from './save-mapping.tsx';
import { useGuess, useTakeFile } from './sending.ts';

interface ImportSheetsProps {
  readonly jobId: string;
  readonly joints: readonly JobJoint[];
}

/** A file that was looked into. */
interface Opened {
  readonly file: File;
  readonly guess: Guess;
}

const ownZone = (): string => new Intl.DateTimeFormat().resolvedOptions().timeZone;
const defaults = () => ({ zone: ownZone(), now: new Date().toISOString() });

/** From the file to its pulls, one sheet after the other. */
export function ImportSheets({ jobId, joints }: ImportSheetsProps) {
  const { t } = useTranslation('lead');
  const guessing = useGuess();
  const [opened, setOpened] = useState<Opened>();
  const [form, setForm] = useState<MappingForm>();
  const open = (file: File) =>
    guessing.mutate(
      { file, zone: ownZone() },
      {
        onSuccess: (guess) => {
          setOpened({ file, guess });
          setForm(formOf(guess, guess.mapping, defaults()));
        },
      },
    );
  return (
    <>
      <FileDrop label={t('import.drop')} hint={t('import.drop-hint')} accept=".csv,.txt,.tsv,text/*" onFile={open} />
      {guessing.isPending ? <Loading /> : null}
      {guessing.isError ? <Trouble error={guessing.error} /> : null}
      {opened && form ? (
        <OpenedFile
          key={opened.file.name + opened.file.lastModified}
          jobId={jobId}
          joints={joints}
          opened={opened}
          form={form}
          onChange={setForm}
        />
      ) : null}
    </>
  );
}

interface OpenedFileProps extends ImportSheetsProps {
  readonly opened: Opened;
  readonly form: MappingForm;
  readonly onChange: (form: MappingForm) => void;
}

function OpenedFile({ jobId, joints, opened, form, onChange }: OpenedFileProps) {
  const { t } = useTranslation('lead');
  const { file, guess } = opened;
  const [joint, setJoint] = useState(joints[0]?.ref);
  const [preview, setPreview] = useState<ImportResult>();
  const [done, setDone] = useState<ImportResult>();
  const taking = useTakeFile(jobId);
  const { mapping, missing } = readMapping(form, file.name.slice(0, 100));
  const namesJoint = form.columns.some((column) => column.role === 'joint');
  const change = (changed: MappingForm) => {
    setPreview(undefined);
    onChange(changed);
  };
  const take = (mode: 'preview' | 'all-or-nothing' | 'good-lines') =>
    mapping &&
    taking.mutate(
      { file, mapping, mode, joint: namesJoint ? undefined : joint },
      { onSuccess: mode === 'preview' ? setPreview : setDone },
    );
  if (done) return <Done jobId={jobId} result={done} />;
  return (
    <>
      <FileSheet
        file={file}
        form={form}
        onChange={change}
        onMapping={(saved) => change(formOf(guess, saved, defaults()))}
      />
      <DoubtList doubts={guess.doubts} />
      <ColumnsSheet form={form} missing={missing} onChange={change}>
        {joints.length > 1 && !namesJoint ? (
          <Select
            label={t('import.joint')}
            hint={t('import.joint-hint')}
            value={joint ?? ''}
            options={joints.map(({ ref, label }) => ({ value: ref, label: `${ref} ${label}` }))}
            onChange={(ref) => {
              setJoint(ref);
              setPreview(undefined);
            }}
          />
        ) : null}
        {mapping ? <SaveMapping mapping={mapping} /> : null}
      </ColumnsSheet>
      <OutcomeSheet
        joints={joints}
        preview={preview}
        isBusy={taking.isPending}
        onPreview={mapping ? () => take('preview') : undefined}
        onTake={take}
      />
      {taking.isError ? <Trouble error={taking.error} /> : null}
    </>
  );
}

function Done({ jobId, result }: { readonly jobId: string; readonly result: ImportResult }) {
  const { t } = useTranslation('lead');
  return (
    <Sheet title={result.kept ? t('import.done') : t('import.nothing-kept')}>
      <ul>
        <li>{t('import.added', { count: result.added })}</li>
        {result.already > 0 ? <li>{t('import.already', { count: result.already })}</li> : null}
        {result.refusedCount > 0 ? <li>{t('import.refused', { count: result.refusedCount })}</li> : null}
      </ul>
      <Link to="/jobs/$jobId" params={{ jobId }} className={buttonClass('primary')}>
        {t('import.to-job')}
      </Link>
    </Sheet>
  );
}
