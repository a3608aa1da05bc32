import { foundation } from './0001-foundation.ts';
import { ownRows } from './0002-own-rows.ts';
import { devices } from './0003-devices.ts';
import { wrenchCare } from './0004-wrench-care.ts';
import { deviceCounts } from './0005-device-counts.ts';
import type { Migration } from './migration.ts';

/** Every step of the schema, in order. */
export const MIGRATIONS: readonly Migration[] = [foundation, ownRows, devices, wrenchCare, deviceCounts];

export const NEWEST_VERSION = MIGRATIONS.length;

export type { Dialect, Migration } from './migration.ts';
