export { openSerial, type SerialEvent, type SerialOptions, type SerialWrench } from './port.ts';
export { type PtyOptions, simulatedOnPty, type WrenchOnPty } from './pty.ts';
export { linesOf, type PullStamp } from './write.ts';
