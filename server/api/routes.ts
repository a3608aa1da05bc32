import { ok } from '@clampwright/core/failure';
import { z } from 'zod';
import { anybody } from './access.ts';
import { addAsset, listAssets } from './assets.ts';
import { calculations, listCalculations } from './calc.ts';
import { certificates, digitalCertificate, keepCalibration, showCalibration } from './calibrations.ts';
import { addCheck, compareSimulated, holdWrench, showCare } from './care.ts';
import { postCommand } from './commands.ts';
import { removeDemo } from './demo.ts';
import { devices } from './devices.ts';
import { openApi } from './document.ts';
import { dueCalendar, dueLabels, listDue } from './due.ts';
import { json } from './gives.ts';
import { health } from './health.ts';
import { importFile } from './imports.ts';
import { listEntries, listJobs, makeJob, showJob } from './jobs.ts';
import { listJoints, releaseJoint, saveJoint, showJoint, showJointPulls } from './joints.ts';
import { listLineDescriptions, removeLineDescription, saveLineDescription } from './line-descriptions.ts';
import { listen } from './live.ts';
import { guess, listMappings, saveMapping } from './mappings.ts';
import { addOwnRow, listOwnRows } from './own-rows.ts';
import { addPerson, listPeople } from './people.ts';
import { sendPulls } from './pulls.ts';
import { readings } from './readings.ts';
import { addRecheck, listRecalls, openRecall, recallPapers, showRecall } from './recalls.ts';
import { records } from './records.ts';
import { keepReference, listReferences, showReference } from './references.ts';
import { type Route, route } from './route.ts';
import { showSession, signIn, signOut } from './session.ts';
import type { Shape } from './shapes.ts';
import { simulate } from './simulate.ts';
import { today } from './today.ts';
import { addCalibration, listCalibrations, shelves, showToolbox } from './toolbox.ts';
import { showEarlierTraces, showTrace } from './traces.ts';

let document: Shape | undefined;

const showDocument = route({
  method: 'get',
  path: '/openapi.json',
  title: 'describe this API',
  access: anybody,
  takes: z.object({}),
  gives: json(z.record(z.string(), z.unknown())),
  // Made when it is first asked for: it takes longer than all else of a start.
  handle: () => ok((document ??= openApi(ROUTES))),
});

/** Every route of the API; the document is made from this list as well. */
export const ROUTES: readonly Route[] = [
  health,
  showDocument,
  showSession,
  signIn,
  signOut,
  listPeople,
  addPerson,
  today,
  listJobs,
  makeJob,
  showJob,
  listEntries,
  showTrace,
  showEarlierTraces,
  listen,
  postCommand,
  simulate,
  importFile,
  ...records,
  listMappings,
  saveMapping,
  guess,
  sendPulls,
  ...devices,
  ...readings,
  listLineDescriptions,
  saveLineDescription,
  removeLineDescription,
  listJoints,
  saveJoint,
  showJoint,
  showJointPulls,
  releaseJoint,
  showToolbox,
  ...shelves,
  listCalibrations,
  addCalibration,
  showCare,
  holdWrench,
  addCheck,
  showCalibration,
  keepCalibration,
  ...certificates,
  digitalCertificate,
  compareSimulated,
  listReferences,
  showReference,
  keepReference,
  listRecalls,
  openRecall,
  showRecall,
  addRecheck,
  ...recallPapers,
  listDue,
  dueCalendar,
  dueLabels,
  listAssets,
  addAsset,
  listOwnRows,
  addOwnRow,
  listCalculations,
  ...calculations,
  removeDemo,
];
