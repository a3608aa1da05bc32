import { mkdir } from 'node:fs/promises';
import { build } from 'vite';

const HERE = import.meta.dirname;
const BUILT = `${HERE}/../../dist/processes`;

/** Programs that tests run as processes of their own. */
export type Program = 'append-pulls';

/** Bundles a program from its source, so that a process starts in a moment and is never older than the test; gives its path. */
export async function built(program: Program): Promise<string> {
  await mkdir(BUILT, { recursive: true });
  await build({
    configFile: false,
    logLevel: 'warn',
    root: HERE,
    resolve: { conditions: ['clampwright-source'] },
    ssr: {
      resolve: { conditions: ['clampwright-source'], externalConditions: ['clampwright-source'] },
      noExternal: [/^@clampwright\//],
    },
    build: { ssr: `${HERE}/${program}.ts`, outDir: BUILT, emptyOutDir: false, minify: false },
  });
  return `${BUILT}/${program}.js`;
}
