import type { Result } from '@clampwright/core/failure';
import type { OwnRow } from '@clampwright/core/fastener';
import { type Asset, assetSchema } from '@clampwright/core/record';
import { type Adapter, adapterSchema, type Extension, extensionSchema } from '@clampwright/core/wrench';
import { type Care, careOn } from './care.ts';
import { type Demo, demoOn } from './demo.ts';
import { type Devices, devicesOn } from './devices.ts';
import type { Engine } from './engine.ts';
import { FoldedJobs } from './jobs/folded-jobs.ts';
import { type Jobs, jobsOn } from './jobs/index.ts';
import { appendStatements } from './jobs/statements.ts';
import { type Joints, jointsOn } from './joints.ts';
import { type LineDescriptions, lineDescriptionsOn } from './line-descriptions.ts';
import { type Mappings, mappingsOn } from './mappings.ts';
import { OWN_ROWS } from './own-rows.ts';
import { type People, peopleOn } from './people.ts';
import { type Pulls, pullsOn } from './pulls/index.ts';
import { type References, referencesOn } from './references.ts';
import { type Register, registerOn } from './register.ts';
import { type Sessions, sessionsOn } from './sessions.ts';
import { type Settings, settingsOn } from './settings.ts';
import { type SigningKey, signingKeyIn } from './signing-key.ts';
import { type Wrenches, wrenchesOn } from './wrenches.ts';

/** Everything that is kept. What is acknowledged here outlives a power cut. */
export interface Store {
  /** Where all of it lies. */
  readonly folder: string;
  readonly jobs: Jobs;
  readonly joints: Joints;
  readonly wrenches: Wrenches;
  readonly references: References;
  readonly care: Care;
  readonly pulls: Pulls;
  readonly adapters: Register<Adapter>;
  readonly extensions: Register<Extension>;
  readonly assets: Register<Asset>;
  /** Never edited: a row is superseded by another that names it. */
  readonly ownRows: Register<OwnRow>;
  readonly people: People;
  readonly sessions: Sessions;
  readonly mappings: Mappings;
  readonly devices: Devices;
  readonly lineDescriptions: LineDescriptions;
  readonly settings: Settings;
  readonly demo: Demo;
  /** The key that seals records, made when it is first wanted. */
  signingKey(): Promise<Result<SigningKey>>;
  /** Changes when another process has stored something; costs microseconds, so it can be asked often. */
  dataVersion(): number;
  /** Waits for what is under way. */
  close(): Promise<void>;
}

/** The store over a database product. */
export function storeOn(engine: Engine, folder: string): Store {
  const statements = appendStatements(engine.reading);
  const folded = new FoldedJobs(statements);
  return {
    folder,
    jobs: jobsOn({ engine, folded, statements }),
    joints: jointsOn(engine),
    wrenches: wrenchesOn(engine),
    references: referencesOn(engine),
    care: careOn(engine),
    pulls: pullsOn(engine),
    adapters: registerOn<Adapter>(engine, { table: 'adapters', what: 'adapter', schema: adapterSchema }),
    extensions: registerOn<Extension>(engine, { table: 'extensions', what: 'extension', schema: extensionSchema }),
    assets: registerOn<Asset>(engine, { table: 'assets', what: 'asset', schema: assetSchema }),
    ownRows: registerOn(engine, OWN_ROWS),
    people: peopleOn(engine),
    sessions: sessionsOn(engine),
    mappings: mappingsOn(engine),
    devices: devicesOn(engine),
    lineDescriptions: lineDescriptionsOn(engine),
    settings: settingsOn(engine),
    demo: demoOn(engine, folded),
    signingKey: () => signingKeyIn(engine, folder),
    dataVersion: () => engine.dataVersion(),
    close: () => engine.close(),
  };
}
