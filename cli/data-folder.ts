import { homedir } from 'node:os';
import path from 'node:path';

/**
 * Where the data lie unless `--data` says otherwise, by the convention of the platform.
 *
 * @source XDG Base Directory Specification for Linux; Apple's and Microsoft's own conventions for theirs
 */
export function defaultDataFolder(
  platform: NodeJS.Platform,
  env: Readonly<Record<string, string | undefined>>,
): string {
  switch (platform) {
    case 'darwin':
      return path.join(homedir(), 'Library', 'Application Support', 'Clampwright');
    case 'win32':
      return path.join(env['LOCALAPPDATA'] ?? path.join(homedir(), 'AppData', 'Local'), 'Clampwright');
    default:
      return path.join(env['XDG_DATA_HOME'] || path.join(homedir(), '.local', 'share'), 'clampwright');
  }
}

/** The data folder that was asked for, or the platform's own. */
export const dataFolder = (asked: string | undefined): string =>
  asked ?? defaultDataFolder(process.platform, process.env);
