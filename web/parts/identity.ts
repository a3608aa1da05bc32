import { uuidV7 } from '@clampwright/core/record';

/** An identity made at this screen. Not `randomUUID`: that is kept from pages served in plain text on the local net. */
export const newId = (): string => uuidV7(Date.now(), crypto.getRandomValues(new Uint8Array(10)));
