import type { LineCheck } from './description.ts';

/**
 * Check of a line, in capital hexadecimal digits.
 *
 * @param text printable ASCII
 */
export function checkOf(text: string, method: LineCheck = 'crc-16'): string {
  switch (method) {
    case 'crc-16':
      return hex(crc16(text), 4);
    case 'xor-8':
      return hex(
        folded(text, (sum, code) => sum ^ code),
        2,
      );
    case 'sum-8':
      return hex(
        folded(text, (sum, code) => (sum + code) & 0xff),
        2,
      );
  }
}

const hex = (value: number, digits: number): string => value.toString(16).toUpperCase().padStart(digits, '0');

function folded(text: string, add: (sum: number, code: number) => number): number {
  let sum = 0;
  for (let i = 0; i < text.length; i++) sum = add(sum, text.charCodeAt(i) & 0xff);
  return sum;
}

/**
 * CRC-16 with polynomial 0x1021 and start 0xFFFF.
 *
 * @source ITU-T V.41 polynomial; catalogued as CRC-16/IBM-3740, check value 29B1 for "123456789" (*from memory*)
 */
function crc16(text: string): number {
  let crc = 0xffff;
  for (let i = 0; i < text.length; i++) {
    crc ^= text.charCodeAt(i) << 8;
    for (let bit = 0; bit < 8; bit++) crc = crc & 0x8000 ? ((crc << 1) ^ 0x1021) & 0xffff : (crc << 1) & 0xffff;
  }
  return crc;
}
