/** So many at once; whoever comes later waits, in the order of coming, until one gives its turn back. */
export class Turns {
  #free: number;
  readonly #waiting: (() => void)[] = [];

  constructor(atOnce: number) {
    this.#free = atOnce;
  }

  /** @returns gives the turn back; to be called once */
  async take(): Promise<() => void> {
    if (this.#free > 0) this.#free -= 1;
    else await new Promise<void>((resolve) => this.#waiting.push(resolve));
    return () => this.#giveBack();
  }

  #giveBack(): void {
    const next = this.#waiting.shift();
    if (next) next();
    else this.#free += 1;
  }
}
