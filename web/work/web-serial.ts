/* What is used of the Web Serial API (WICG draft), which the compiler's library does not know yet. */

export interface WebPort {
  readonly readable: ReadableStream<Uint8Array> | null;
  open(options: { readonly baudRate: number }): Promise<void>;
  close(): Promise<void>;
}

interface WebSerial {
  /** Asks the person at the screen for a port. */
  requestPort(): Promise<unknown>;
}

const has = (value: unknown, member: string): value is object =>
  typeof value === 'object' && value !== null && member in value;
const isSerial = (value: unknown): value is WebSerial => has(value, 'requestPort');
const isPort = (value: unknown): value is WebPort => has(value, 'open') && has(value, 'readable');

/** The browser's way to serial ports; undefined where it has none. */
export function webSerial(): WebSerial | undefined {
  return 'serial' in navigator && isSerial(navigator.serial) ? navigator.serial : undefined;
}

/** The port that the person at the screen chose; undefined when they chose none. */
export async function choosePort(serial: WebSerial): Promise<WebPort | undefined> {
  const port = await serial.requestPort();
  return isPort(port) ? port : undefined;
}
