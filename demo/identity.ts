import { digestOf, uuidV8 } from '@clampwright/core/record';

/** Identity of a thing of the demo: the same name gives the same one at every load. */
export const demoId = (name: string): string => uuidV8(digestOf(['kestrelhorn', name]));
