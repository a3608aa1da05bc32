import { foundation } from './0001-foundation.ts';
import { ownRows } from './0002-own-rows.ts';
import type { Migration } from './migration.ts';

/** Every step of the schema, in order. */
export const MIGRATIONS: readonly Migration[] = [foundation, ownRows];

export const NEWEST_VERSION = MIGRATIONS.length;

export type { Dialect, Migration } from './migration.ts';
