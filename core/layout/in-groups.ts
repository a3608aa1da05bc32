/** What several wrenches pull one after another, each time so many at once; the last group may be smaller. */
export const inGroups = <One>(order: readonly One[], size: number): readonly (readonly One[])[] =>
  Array.from({ length: Math.ceil(order.length / size) }, (_, index) => order.slice(index * size, (index + 1) * size));
