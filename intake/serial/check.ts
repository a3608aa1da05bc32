/**
 * Check of a line: CRC-16 with polynomial 0x1021 and start 0xFFFF, four capital hexadecimal digits.
 *
 * @param text printable ASCII
 * @source ITU-T V.41 polynomial; catalogued as CRC-16/IBM-3740, check value 29B1 for "123456789" (*from memory*)
 */
export function checkOf(text: string): string {
  let crc = 0xffff;
  for (let i = 0; i < text.length; i++) {
    crc ^= text.charCodeAt(i) << 8;
    for (let bit = 0; bit < 8; bit++) crc = crc & 0x8000 ? ((crc << 1) ^ 0x1021) & 0xffff : (crc << 1) & 0xffff;
  }
  return crc.toString(16).toUpperCase().padStart(4, '0');
}
