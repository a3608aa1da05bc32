import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { usePerson } from '../app/session.ts';
import { toolboxQuery } from '../jobs/toolbox-query.ts';
import { Button, buttonClass } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { PageHeader } from '../parts/page-header.tsx';
import { Loading, Trouble } from '../parts/states.tsx';
import { dueQuery } from './care-query.ts';
import { mayKeep } from './may-keep.ts';
import { type DialogKind, ToolboxDialog } from './toolbox-dialog.tsx';
import { AdapterList, ExtensionList } from './turning-lists.tsx';
import { WrenchList } from './wrench-list.tsx';
import './wrenches.css';

/** All that turns fasteners here, and where it stands in its calibration. */
export default function WrenchesPlace() {
  const { t } = useTranslation('lead');
  const toolbox = useQuery(toolboxQuery);
  const due = useQuery(dueQuery);
  const pullsSince = new Map((due.data ?? []).map(({ id, pullsSince: pulls = 0 }) => [id, pulls]));
  const person = usePerson();
  const [open, setOpen] = useState<DialogKind>();
  const may = mayKeep(person);
  return (
    <>
      <PageHeader title={t('wrenches.title')} text={t('wrenches.text')}>
        <Link className={buttonClass()} to="/wrenches/devices">
          {t('devices.title')}
        </Link>
        <Link className={buttonClass()} to="/wrenches/references">
          {t('care.references')}
        </Link>
        <Link className={buttonClass()} to="/recalls">
          {t('care.recalls')}
        </Link>
        {may.register && toolbox.data ? (
          <Button kind="primary" onPress={() => setOpen({ kind: 'wrench' })}>
            {t('wrenches.register')}
          </Button>
        ) : null}
      </PageHeader>
      {may.register && may.calibrate ? null : (
        <Notice kind="plain" title={may.register ? t('wrenches.calibration-keeper-only') : t('wrenches.keeper-only')} />
      )}
      {toolbox.isPending ? <Loading /> : null}
      {toolbox.isError ? <Trouble error={toolbox.error} onRetry={() => void toolbox.refetch()} /> : null}
      {toolbox.data ? (
        <>
          <WrenchList
            wrenches={toolbox.data.wrenches}
            pullsSince={pullsSince}
            onCalibrate={may.calibrate ? (wrench) => setOpen({ kind: 'calibration', wrench }) : undefined}
          />
          <AdapterList
            adapters={toolbox.data.adapters}
            wrenches={toolbox.data.wrenches}
            onAdd={may.register ? () => setOpen({ kind: 'adapter' }) : undefined}
          />
          <ExtensionList
            extensions={toolbox.data.extensions}
            onAdd={may.register ? () => setOpen({ kind: 'extension' }) : undefined}
          />
        </>
      ) : null}
      {open ? <ToolboxDialog open={open} onClose={() => setOpen(undefined)} /> : null}
    </>
  );
}
