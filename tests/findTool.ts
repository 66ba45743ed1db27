import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const onPath = (name: string): string | null =>
  (process.env['PATH'] ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find((file) => existsSync(file)) ?? null;

/** Installs a Debian package where that is possible; says nothing and returns where it is not. */
const install = (debian: string): void => {
  if (process.getuid?.() !== 0 || onPath('apt-get') === null) return;
  const quiet = { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
  try {
    // tests run side by side, and one package is installed at a time
    const wait = ['-o', 'DPkg::Lock::Timeout=300'];
    execFileSync('apt-get', [...wait, 'update'], quiet as object);
    const chosen = ['install', '-y', '--no-install-recommends', debian];
    execFileSync('apt-get', [...wait, ...chosen], quiet as object);
  } catch {
    // the caller says in one line what is missing
  }
};

/** A program that the tests call: on the PATH, else installed as root on Debian, else one clear line. */
export const findTool = (name: string, debian: string): string => {
  const found = onPath(name);
  if (found !== null) return found;
  install(debian);
  const installed = onPath(name);
  if (installed !== null) return installed;
  throw new Error(`the tests need ${name}: install the Debian package ${debian} or its like`);
};
