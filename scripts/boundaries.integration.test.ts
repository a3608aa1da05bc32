import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';

const cruised = spawnSync(process.execPath, ['scripts/boundaries.js', 'scripts/deliberate'], { encoding: 'utf8' });

describe('the arrows of the house', () => {
  it('fails the build on a forbidden import', () => {
    expect(cruised.status).toBe(1);
    expect(cruised.stderr).toContain('arrow-core: core/reaches-up.ts → store/rows.ts');
    expect(cruised.stderr).toContain('arrow-web: web/page.ts → store/rows.ts');
  });

  it('keeps Node out of core', () => {
    expect(cruised.stderr).toContain('core-is-pure: core/reaches-up.ts → fs');
  });

  it('finds a circle', () => {
    expect(cruised.stderr).toMatch(/no-circles: store\/(rows|circle)\.ts/);
  });
});
