export { openSerial, type SerialEvent, type SerialOptions, type SerialWrench } from './port.ts';
export { type PtyOptions, simulatedOnPty, type WrenchOnPty } from './pty.ts';
export {
  type LineEvent,
  READER_START,
  type ReaderState,
  readLines,
  type SerialPull,
  type UnreadableLines,
} from './reader.ts';
export { linesOf, type PullStamp } from './write.ts';
