import { uuidV7 } from '@clampwright/core/record';

const RANDOM_BYTES = 10;

/** A new identity, made here so that it stays the same however often a thing is sent. */
export const newIdentity = (): string => uuidV7(Date.now(), crypto.getRandomValues(new Uint8Array(RANDOM_BYTES)));
