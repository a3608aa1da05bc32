export { type Failure, failed, invalid, ok, type Result, ROLES, type Role, roleSchema } from './failure.ts';
export { parse } from './parse.ts';
export { within } from './within.ts';
