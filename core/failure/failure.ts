import { z } from 'zod';

/** The four kinds of people: who works, who releases and accepts, who keeps the wrenches, who only reads. */
export const ROLES = ['technician', 'lead', 'keeper', 'reader'] as const;
export const roleSchema = z.enum(ROLES);
export type Role = z.infer<typeof roleSchema>;

/** Expected failures. Edges translate one once: to an exit code, a problem document, a message. */
export type Failure =
  | { readonly kind: 'invalid'; readonly field: string; readonly message: string; readonly expected: string }
  | { readonly kind: 'not-found'; readonly what: string; readonly id: string }
  | { readonly kind: 'conflict'; readonly message: string; readonly current: unknown }
  | { readonly kind: 'forbidden'; readonly action: string; readonly needs: Role }
  | { readonly kind: 'unavailable'; readonly message: string; readonly remedy: string };

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly failure: Failure };

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });

export const failed = (failure: Failure): { readonly ok: false; readonly failure: Failure } => ({ ok: false, failure });

/** Refusal of one input: which field, what is wrong with it, what it wants. */
export const invalid = (field: string, message: string, expected: string) =>
  failed({ kind: 'invalid', field, message, expected });
