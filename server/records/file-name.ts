import type { RecordFile } from '@clampwright/core/record';

const LONGEST = 60;

/** Letters that fall apart into a plain letter and its marks lose the marks; what is left over becomes a hyphen. */
const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replaceAll(/^-|-$/g, '');

/** A name that says which asset, which job and when, safe on every file system. */
export function recordFileName({ entries }: RecordFile, extension: string): string {
  const first = entries[0];
  const sheet = first?.body.kind === 'opened' ? first.body.sheet : undefined;
  const day = (entries.at(-1)?.at ?? '').slice(0, 10);
  const parts = [day, plain(sheet?.asset.name ?? ''), plain(sheet?.title ?? ''), (first?.jobId ?? '').slice(-8)];
  return `${parts.filter((part) => part !== '').join('_')}.${extension}`;
}
