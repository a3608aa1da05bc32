#!/usr/bin/env node
import { existsSync } from 'node:fs';

const main = new URL('../dist/main.js', import.meta.url);
if (!existsSync(main)) {
  process.stderr.write('The command is not built yet: run `npm run build` in the repository once.\n');
  process.exit(1);
}
await import(main.href);
