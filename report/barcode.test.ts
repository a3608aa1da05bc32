import { describe, expect, it } from 'vitest';
import { qrPath } from './barcode.ts';

/** The path as rows of modules. */
function modules(content: string): readonly string[] {
  const { d, sizeModules } = qrPath(content);
  const rows = Array.from({ length: sizeModules }, () => Array.from({ length: sizeModules }, () => ' '));
  for (const [, x, y, length] of d.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    rows[Number(y)]!.fill('#', Number(x), Number(x) + Number(length));
  return rows.map((row) => row.join(''));
}

describe('qrPath', () => {
  // ISO/IEC 18004:2015, 6.3.3: finder pattern, in three corners, four light modules around
  it('draws the finder patterns inside the quiet zone', () => {
    const rows = modules('CLAMPWRIGHT');
    const finder = ['#######', '#     #', '# ### #', '# ### #', '# ### #', '#     #', '#######'];
    const corner = (x: number, y: number) => rows.slice(y, y + 7).map((row) => row.slice(x, x + 7));
    const far = rows.length - 11;
    expect(rows.slice(0, 4).join('').trim()).toBe('');
    expect([corner(4, 4), corner(far, 4), corner(4, far)]).toEqual([finder, finder, finder]);
  });

  // ISO/IEC 18004:2015, table 1: version v has 17 + 4 v modules a side; table 7: version 11-M holds 366 alphanumeric characters
  it('packs capitals and digits as densely as the standard lets it', () => {
    expect(qrPath('A'.repeat(366)).sizeModules).toBe(17 + 4 * 11 + 8);
    expect(qrPath('A'.repeat(367)).sizeModules).toBe(17 + 4 * 12 + 8);
  });
});
