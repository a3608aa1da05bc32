const BASE = 128;

/** Puts bytes one after the other; grows as it must. */
export class ByteWriter {
  #bytes = new Uint8Array(256);
  #length = 0;

  byte(value: number): void {
    if (this.#length === this.#bytes.length) {
      const wider = new Uint8Array(2 * this.#bytes.length);
      wider.set(this.#bytes);
      this.#bytes = wider;
    }
    this.#bytes[this.#length++] = value;
  }

  /** A whole number of 0 or more, seven bits a byte, the lowest first; the eighth bit says that more comes. */
  whole(value: number): void {
    let rest = value;
    while (rest >= BASE) {
      this.byte((rest % BASE) + BASE);
      rest = Math.floor(rest / BASE);
    }
    this.byte(rest);
  }

  /** A whole number of either sign: 0, -1, 1, -2 … as 0, 1, 2, 3 … */
  signed(value: number): void {
    this.whole(value < 0 ? -2 * value - 1 : 2 * value);
  }

  /** A number as IEEE 754 has it, eight bytes, the lowest first. */
  figure(value: number): void {
    const eight = new Uint8Array(8);
    new DataView(eight.buffer).setFloat64(0, value, true);
    for (const byte of eight) this.byte(byte);
  }

  done(): Uint8Array {
    return this.#bytes.slice(0, this.#length);
  }
}

/** Takes bytes one after the other; beyond the end everything is 0, and `isAtEnd` is false. */
export class ByteReader {
  readonly #bytes: Uint8Array;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  get isAtEnd(): boolean {
    return this.#at === this.#bytes.length;
  }

  byte(): number {
    return this.#bytes[this.#at++] ?? 0;
  }

  whole(): number {
    let value = 0;
    let weight = 1;
    let byte = this.byte();
    while (byte >= BASE && this.#at < this.#bytes.length) {
      value += (byte - BASE) * weight;
      weight *= BASE;
      byte = this.byte();
    }
    return value + byte * weight;
  }

  signed(): number {
    const value = this.whole();
    return value % 2 === 1 ? -(value + 1) / 2 : value / 2;
  }

  figure(): number {
    const eight = Uint8Array.from({ length: 8 }, () => this.byte());
    return new DataView(eight.buffer).getFloat64(0, true);
  }
}
