import bwipjs from 'bwip-js';

/** A square symbol as one SVG path: one module is one unit, the quiet zone is counted in. */
export interface BarcodePath {
  readonly d: string;
  readonly sizeModules: number;
}

/** Light modules that must surround the symbol (ISO/IEC 18004:2015, 5.3.8). */
const QUIET_MODULES = 4;

/**
 * QR code, error correction level M.
 *
 * @param content upper-case letters, digits and `$%*+-./:` and space pack densest; anything else works too
 * @throws when the content does not fit into a QR code: about 2,300 bytes
 * @source ISO/IEC 18004:2015
 */
export function qrPath(content: string): BarcodePath {
  const [symbol] = bwipjs.raw('qrcode', content, 'eclevel=M');
  if (!symbol || !('pixs' in symbol)) throw new Error('a QR code is a matrix of modules');
  return { d: runs(symbol.pixs, symbol.pixx), sizeModules: symbol.pixx + 2 * QUIET_MODULES };
}

/** Dark modules side by side become one rectangle, so that no seams show between them. */
function runs(modules: readonly number[], width: number): string {
  const rectangles: string[] = [];
  for (let start = 0; start < modules.length; ) {
    const row = Math.floor(start / width);
    let end = start;
    while (end < (row + 1) * width && modules[end] === 1) end++;
    if (end > start) {
      rectangles.push(`M${(start % width) + QUIET_MODULES} ${row + QUIET_MODULES}h${end - start}v1h${start - end}z`);
    }
    start = Math.max(end, start + 1);
  }
  return rectangles.join('');
}
