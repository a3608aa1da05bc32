export { type AcceptanceLimits, acceptanceLimits } from './acceptance-limits.ts';
export { type Conformity, conformityOf, type Limits } from './conformity.ts';
export * from './judge-quantities.ts';
export * from './verdict.ts';
