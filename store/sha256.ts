import { hash } from 'node:crypto';
import type { Sha256 } from '@clampwright/core/record';

/** SHA-256 of the platform. */
export const sha256: Sha256 = (text) => hash('sha256', text);
