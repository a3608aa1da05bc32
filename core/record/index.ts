export * from './entry.ts';
export * from './command.ts';
export * from './state.ts';
export * from './file.ts';
