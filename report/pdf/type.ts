import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

export type Face = 'regular' | 'semibold' | 'bold';

/** One way to set text: face, size and distance from line to line, in points. */
export interface Style {
  readonly face: Face;
  readonly sizePt: number;
  readonly leadPt: number;
}

export const STYLES = {
  title: { face: 'bold', sizePt: 24, leadPt: 29 },
  subject: { face: 'regular', sizePt: 13, leadPt: 18 },
  heading1: { face: 'bold', sizePt: 15, leadPt: 20 },
  heading2: { face: 'semibold', sizePt: 11, leadPt: 15 },
  figure: { face: 'semibold', sizePt: 22, leadPt: 27 },
  body: { face: 'regular', sizePt: 9, leadPt: 13 },
  strong: { face: 'semibold', sizePt: 9, leadPt: 13 },
  table: { face: 'regular', sizePt: 8, leadPt: 11 },
  tableStrong: { face: 'semibold', sizePt: 8, leadPt: 11 },
  label: { face: 'regular', sizePt: 7.5, leadPt: 10 },
} as const satisfies Record<string, Style>;

export type Faces = Readonly<Record<Face, Uint8Array>>;

/** Noto Sans (SIL Open Font License 1.1), to be embedded. */
export async function loadFaces(): Promise<Faces> {
  const require = createRequire(import.meta.url);
  const [regular, semibold, bold] = await Promise.all([
    readFile(require.resolve('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf')),
    readFile(require.resolve('@expo-google-fonts/noto-sans/600SemiBold/NotoSans_600SemiBold.ttf')),
    readFile(require.resolve('@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf')),
  ]);
  return { regular, semibold, bold };
}
