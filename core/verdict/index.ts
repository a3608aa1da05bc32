export * from './judge-quantities.ts';
export * from './verdict.ts';
