import { homedir } from 'node:os';

/** The program that a setting names: `~` is the home folder, `${workspaceFolder}` the first folder that is open. */
export function programPath(setting: string, folder: string | undefined): string {
  const path = setting.trim() || 'recipe';
  const home = path === '~' || path.startsWith('~/') || path.startsWith('~\\') ? homedir() + path.slice(1) : path;
  return folder === undefined ? home : home.replaceAll('${workspaceFolder}', folder);
}
