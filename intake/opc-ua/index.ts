export { type JoiningSystemClient, type OpcUaOptions, openJoiningSystem } from './client.ts';
export type { JoiningSystemEvent, ResultTaker } from './event.ts';
export { type OpcUaSettings, opcUaSettingsSchema, SECURITY_MODES, SECURITY_POLICIES } from './settings.ts';
