import type { PersonRef } from '@clampwright/core/record';
import { demoId } from './identity.ts';

/** One PIN for everybody of the invented workshop; the README prints it: it protects nothing. */
export const DEMO_PIN = '2468';

const somebody = (name: string, role: PersonRef['role']): PersonRef => ({ id: demoId(`person ${name}`), name, role });

export const TECHNICIAN = somebody('Tamsin Orrell', 'technician');
export const SECOND_TECHNICIAN = somebody('Bram Oduya', 'technician');
export const LEAD = somebody('Ines Falk', 'lead');
export const KEEPER = somebody('Per Lindqvist', 'keeper');
export const READER = somebody('Rosa Amaral', 'reader');

export const DEMO_PEOPLE: readonly PersonRef[] = [TECHNICIAN, SECOND_TECHNICIAN, LEAD, KEEPER, READER];
