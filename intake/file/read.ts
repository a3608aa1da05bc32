import type { FileContext } from './context.ts';
import type { Mapping } from './mapping.ts';
import type { Outcome } from './outcome.ts';
import { type TableReader, tableReader } from './table.ts';
import { textsOf } from './texts.ts';

/**
 * Pulls of a CSV file, in the order of the file and with bounded memory, however long it is.
 *
 * A bad line is refused by its number with the reason, and reading goes on; what is no text, or has not the mapping's
 * columns, is refused once and ends. The same file read twice gives the same identities.
 *
 * @param bytes the file, in pieces of any size
 */
export async function* readPulls(
  bytes: AsyncIterable<Uint8Array>,
  mapping: Mapping,
  context: FileContext,
): AsyncGenerator<Outcome, void, undefined> {
  let table: TableReader | undefined;
  for await (const text of textsOf(bytes, mapping)) {
    table ??= tableReader(mapping, context, text);
    yield* table.push(text);
    if (table.stopped()) return;
  }
  yield* (table ?? tableReader(mapping, context, '')).end();
}
