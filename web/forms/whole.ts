type Known<T> = { readonly [K in keyof T]: Exclude<T[K], undefined> };

/** The object when every value of it is known. */
export function whole<T extends object>(parts: T): Known<T> | undefined {
  const isKnown = (value: T): value is T & Known<T> => Object.values(value).every((part) => part !== undefined);
  return isKnown(parts) ? parts : undefined;
}
