import type { english } from './english.ts';

/** Name of a text about plots and mechanics. */
export type MechanicsKey = keyof typeof english;

/** One language's texts: exactly the keys of the English ones. */
export type MechanicsCatalogue = { readonly [K in MechanicsKey]: string };
