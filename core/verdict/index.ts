export * from './verdict.ts';
export * from './judge-quantities.ts';
