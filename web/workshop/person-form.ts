import type { NewPerson } from '@clampwright/server/contract';
import type { Fault } from '../forms/fault.ts';

export interface PersonForm {
  readonly name: string;
  readonly role: NewPerson['role'];
  readonly pin: string;
  readonly pinAgain: string;
}

export interface PersonReading {
  readonly person: NewPerson | undefined;
  readonly faults: readonly Fault[];
}

const PIN = /^\d{4,12}$/;

/** The person that stands in the form; the PIN is typed twice, as nobody sees it. */
export function readPerson(form: PersonForm): PersonReading {
  const name = form.name.trim();
  const faults: Fault[] = [];
  if (name === '') faults.push({ field: 'name', finding: { kind: 'needed' } });
  if (!PIN.test(form.pin)) faults.push({ field: 'pin', finding: { kind: 'pin' } });
  else if (form.pinAgain !== form.pin) faults.push({ field: 'pinAgain', finding: { kind: 'pin-differs' } });
  return { person: faults.length === 0 ? { name, role: form.role, pin: form.pin } : undefined, faults };
}
