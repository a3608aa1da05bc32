import type { Generated } from 'kysely';

/* The tables as they lie in the database: text ids, ISO text times, JSON as text, flags as 0 and 1. */

/** `demo`: 1 when the row belongs to the invented scenario and goes with it. */
type Flag = 0 | 1;

export interface SchemaVersionsTable {
  readonly version: number;
  readonly name: string;
}

/** Derived from the entries, one row a job; can be made anew from them at any time. */
export interface JobsTable {
  readonly id: string;
  readonly demo: Flag;
  readonly title: string;
  readonly asset_name: string;
  readonly asset_location: string;
  readonly status: 'open' | 'signed-off' | 'closed';
  readonly done: number;
  readonly total: number;
  readonly retorques: string;
  readonly opened_at: string;
  readonly last_at: string;
  readonly last_seq: number;
  readonly last_hash: string;
}

/** `entry` is the whole entry in canonical form, as it was hashed. `arrival` counts over all jobs. */
export interface EntriesTable {
  readonly arrival: Generated<number>;
  readonly job_id: string;
  readonly seq: number;
  readonly id: string;
  readonly entry: string;
}

export interface TracesTable {
  readonly pull_id: string;
  readonly job_id: string;
  readonly samples: Uint8Array;
}

export interface SealsTable {
  readonly job_id: string;
  readonly seal: string;
}

export interface JointsTable {
  readonly id: string;
  readonly demo: Flag;
}

export interface JointRevisionsTable {
  readonly joint_id: string;
  readonly revision: number;
  readonly status: 'draft' | 'released';
  readonly content: string;
}

/** What is kept in a register: things known by name, added once. */
export interface RegisterTable {
  readonly id: string;
  readonly demo: Flag;
  readonly name: string;
  readonly content: string;
}

export interface CalibrationsTable {
  readonly wrench_id: string;
  /** Counts from 1 in the order in which they were added. */
  readonly number: number;
  readonly calibrated_on: string;
  readonly summary: string;
}

/** What is said one thing after the other, of a wrench or of a recall. */
export interface LogTable {
  readonly id: string;
  readonly owner_id: string;
  readonly at: string;
  readonly content: string;
}

/** A reference standard with each of its certificates, the newest last. */
export interface ReferenceStandardsTable {
  readonly id: string;
  readonly number: number;
  readonly demo: Flag;
  readonly content: string;
}

/** Derived from the entries: every pull that stands, by wrench and time. Can be made anew at any time. */
export interface PullsTable {
  readonly wrench_id: string;
  readonly taken_at: string;
  readonly pull_id: string;
  readonly job_id: string;
  readonly joint_ref: string;
  readonly stage: number;
  readonly round: number;
  readonly position: number;
  readonly torque_nm: number;
  readonly shown_nm: number;
  readonly lower_nm: number | null;
  readonly upper_nm: number | null;
  readonly uncertainty_nm: number | null;
}

export interface PeopleTable {
  readonly id: string;
  readonly demo: Flag;
  readonly name: string;
  readonly role: 'technician' | 'lead' | 'keeper' | 'reader';
  readonly pin_hash: string | null;
}

export interface SessionsTable {
  readonly token_hash: string;
  readonly person_id: string;
  readonly expires_at: string;
  readonly ended_at: string | null;
}

export interface MappingsTable {
  readonly name: string;
  readonly demo: Flag;
  readonly mapping: string;
}

/** `key_hash`: SHA-256 of the key with which the device sends; null: it has none. */
export interface DevicesTable extends RegisterTable {
  readonly key_hash: string | null;
}

/** What a device has told so far, as JSON; goes with its device. */
export interface DeviceCountsTable {
  readonly device_id: string;
  readonly content: string;
}

export interface LineDescriptionsTable {
  readonly name: string;
  readonly demo: Flag;
  readonly content: string;
}

export interface SettingsTable {
  readonly name: string;
  readonly value: string;
}

export interface Tables {
  readonly schema_versions: SchemaVersionsTable;
  readonly jobs: JobsTable;
  readonly entries: EntriesTable;
  readonly traces: TracesTable;
  readonly seals: SealsTable;
  readonly joints: JointsTable;
  readonly joint_revisions: JointRevisionsTable;
  readonly wrenches: RegisterTable;
  readonly adapters: RegisterTable;
  readonly extensions: RegisterTable;
  readonly assets: RegisterTable;
  readonly own_rows: RegisterTable;
  readonly calibrations: CalibrationsTable;
  readonly whole_calibrations: LogTable;
  readonly reference_standards: ReferenceStandardsTable;
  readonly checks: LogTable;
  readonly recalls: LogTable;
  readonly rechecks: LogTable;
  readonly pulls: PullsTable;
  readonly people: PeopleTable;
  readonly sessions: SessionsTable;
  readonly mappings: MappingsTable;
  readonly devices: DevicesTable;
  readonly device_counts: DeviceCountsTable;
  readonly line_descriptions: LineDescriptionsTable;
  readonly settings: SettingsTable;
}

export const flag = (demo: boolean | undefined): Flag => (demo ? 1 : 0);
