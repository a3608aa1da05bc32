import type { english } from './english.ts';

/** Name of a text in the catalogues. */
export type Key = keyof typeof english;

/** One language's texts: exactly the keys of the English ones. */
export type Catalogue = { readonly [K in Key]: string };

type Placeholder<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Placeholder<Rest>
  : never;

/** What a text has places for. */
export type ParamsOf<Text extends string> = { readonly [Name in Placeholder<Text>]: string | number };

/** Nothing to fill in: no parameter; something to fill in: all of it. */
export type FillingOf<Text extends string> = [keyof ParamsOf<Text>] extends [never] ? [] : [ParamsOf<Text>];

/** What must be filled in to say a text, read off the English one. */
export type Params<K extends Key> = ParamsOf<(typeof english)[K]>;
export type Filling<K extends Key> = FillingOf<(typeof english)[K]>;

const PLACEHOLDER = /\{(\w+)\}/g;

/** Names of the placeholders in a text, in order of first appearance. */
export const placeholders = (text: string): readonly string[] => [
  ...new Set([...text.matchAll(PLACEHOLDER)].map((match) => match[1]!)),
];

/** Puts the parameters into a text; a name without a parameter stays as it is, so that it is seen. */
export const fill = (text: string, params: { readonly [name: string]: string | number }): string =>
  text.replaceAll(PLACEHOLDER, (whole, name: string) => String(params[name] ?? whole));
