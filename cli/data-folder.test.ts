import { homedir } from 'node:os';
import { expect, it } from 'vitest';
import { defaultDataFolder } from './data-folder.ts';

it.each([
  ['linux', { XDG_DATA_HOME: '/srv/data' }, '/srv/data/clampwright'],
  ['linux', {}, `${homedir()}/.local/share/clampwright`],
  ['linux', { XDG_DATA_HOME: '' }, `${homedir()}/.local/share/clampwright`],
  ['darwin', {}, `${homedir()}/Library/Application Support/Clampwright`],
] as const)('on %s with %j it is %s', (platform, env, folder) => {
  expect(defaultDataFolder(platform, env)).toBe(folder);
});
