import type { english } from './english.ts';

/** Name of a text about the care of wrenches. */
export type CareKey = keyof typeof english;

/** One language's texts: exactly the keys of the English ones. */
export type CareCatalogue = { readonly [K in CareKey]: string };
