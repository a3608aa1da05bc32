import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, it } from 'vitest';
import { aCertificate } from '../testing/a-certificate.ts';
import { writeDcc } from './write-dcc.ts';

/** Path of dcc.xsd with the D-SI schema that it imports beside it. The schema is not ours to keep. */
const schema = process.env['DCC_SCHEMA'];
const isHere = spawnSync('xmllint', ['--version']).status === 0 && schema !== undefined;

it.skipIf(!isHere)('a digital certificate is valid against the schema that DCC_SCHEMA names (needs xmllint)', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'dcc-'));
  try {
    const file = path.join(folder, 'certificate.xml');
    const software = { name: 'Clampwright', release: '0.1.0' };
    writeFileSync(
      file,
      writeDcc(aCertificate, { language: 'en', country: 'CH', laboratory: 'L', customer: 'C', software }),
    );
    const { stderr, status } = spawnSync('xmllint', ['--nonet', '--noout', '--schema', schema ?? '', file], {
      encoding: 'utf8',
    });
    expect([status, stderr]).toEqual([0, expect.stringContaining('validates')]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
