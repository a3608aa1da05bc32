import { describe, expect, it } from 'vitest';
import { decoderOf } from './decode.ts';
import { guessEncoding } from './encoding.ts';

const utf8 = (text: string) => new TextEncoder().encode(text);
const utf16le = (text: string) => new Uint8Array(Buffer.from(text, 'utf16le'));
const utf16be = (text: string) => new Uint8Array(Buffer.from(text, 'utf16le').swap16());
const TEXT = 'Größe;Drehmoment\r\n1;85,4\r\n';

describe('guessEncoding', () => {
  it.each([
    ['UTF-8', utf8(TEXT), 'utf-8', 0],
    ['UTF-8 with a mark', utf8(`\ufeff${TEXT}`), 'utf-8', 3],
    ['UTF-16 LE with a mark', utf16le(`\ufeff${TEXT}`), 'utf-16le', 2],
    ['UTF-16 BE with a mark', utf16be(`\ufeff${TEXT}`), 'utf-16be', 2],
    ['UTF-16 LE', utf16le(TEXT), 'utf-16le', 0],
    ['UTF-16 BE', utf16be(TEXT), 'utf-16be', 0],
    ['plain ASCII', utf8('a,b\n1,2\n'), 'utf-8', 0],
  ] as const)('tells %s', (_, bytes, encoding, markBytes) => {
    expect(guessEncoding(bytes)).toEqual({ encoding, markBytes, sure: true });
  });

  it('takes what is not UTF-8 for Windows-1252, and says that it is not sure', () => {
    expect(guessEncoding(Buffer.from(TEXT, 'latin1'))).toEqual({ encoding: 'windows-1252', markBytes: 0, sure: false });
  });

  it('is not put off by a character that the end of the bytes cuts', () => {
    expect(guessEncoding(utf8('Größe').subarray(0, 4)).encoding).toBe('utf-8');
  });

  it('does not take a binary file for UTF-16', () => {
    const binary = Uint8Array.from({ length: 1000 }, (_, i) => (i % 3 === 0 ? 0 : i % 251));
    expect(guessEncoding(binary).encoding).not.toMatch(/utf-16/);
  });
});

describe('decoderOf', () => {
  it('reads the signs that Windows-1252 has and Latin-1 has not', () => {
    // WHATWG Encoding Standard, index windows-1252: 80 €, 84 „, 93 “, 96 –, E4 ä (from memory).
    expect(decoderOf('windows-1252').push(Uint8Array.of(0x80, 0x84, 0x93, 0x96, 0xe4))).toBe('€„“–ä');
  });

  it('puts a character together that two pieces share', () => {
    const decoder = decoderOf('utf-8');
    const bytes = utf8('ö');
    expect(decoder.push(bytes.subarray(0, 1)) + decoder.push(bytes.subarray(1)) + decoder.end()).toBe('ö');
  });

  it('marks what it cannot read', () => {
    expect(decoderOf('utf-8').push(Uint8Array.of(0x31, 0xff, 0x32))).toBe('1\ufffd2');
  });
});
