import type { PersonRef } from '@clampwright/core/record';
import { demoId } from './identity.ts';

/** Somebody of the invented workshop. The PIN is printed on the sign-in page: it protects nothing. */
export interface DemoPerson extends PersonRef {
  readonly pin: string;
}

/** One PIN for all of them, so that whoever tries the demonstration remembers it. */
export const DEMO_PIN = '2468';

const somebody = (name: string, role: PersonRef['role']): DemoPerson => ({ id: demoId(`person ${name}`), name, role, pin: DEMO_PIN });

export const TECHNICIAN = somebody('Tamsin Orrell', 'technician');
export const SECOND_TECHNICIAN = somebody('Bram Oduya', 'technician');
export const LEAD = somebody('Ines Falk', 'lead');
export const KEEPER = somebody('Per Lindqvist', 'keeper');
export const READER = somebody('Rosa Amaral', 'reader');

export const DEMO_PEOPLE: readonly DemoPerson[] = [TECHNICIAN, SECOND_TECHNICIAN, LEAD, KEEPER, READER];
