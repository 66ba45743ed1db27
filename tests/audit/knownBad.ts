import listed from './knownBad.json' with { type: 'json' };

/** Versions of a package that a published advisory names as bad. */
export interface KnownBad {
  readonly name: string;
  /** The first bad version; every one before `below` where there is none. */
  readonly from?: string;
  /** The first version that is mended. */
  readonly below: string;
  readonly severity: string;
  readonly what: string;
  /** The address of the advisory. */
  readonly source: string;
  /** Why it does not reach this program, where that has been looked into. */
  readonly accepted?: string;
}

/** Bad versions of what this project is or was made of, looked up in November 2026. */
export const knownBad: readonly KnownBad[] = listed;

/** A package as a lock file has it. */
export interface Locked {
  readonly name: string;
  readonly version: string;
}

/** The packages of a lock file of npm, version 3: the same name can stand in it more than once. */
export const lockedIn = (text: string): Locked[] => {
  const { packages } = JSON.parse(text) as {
    packages: Readonly<Record<string, { readonly version?: string }>>;
  };
  const folder = 'node_modules/';
  return Object.entries(packages).flatMap(([place, { version }]) => {
    const at = place.lastIndexOf(folder);
    return at < 0 || version === undefined
      ? []
      : [{ name: place.slice(at + folder.length), version }];
  });
};

/** A version in numbers; what comes before a release (`1.2.0-beta`) counts as less than it. */
const numbersOf = (version: string): readonly number[] => {
  const [release = '', before] = (version.split('+')[0] ?? '').split(/-(.*)/);
  return [...release.split('.').map(Number), before === undefined ? 0 : -1];
};

const isBelow = (version: string, other: string): boolean => {
  const [one, two] = [numbersOf(version), numbersOf(other)];
  const at = one.findIndex((number, n) => number !== two[n]);
  return at >= 0 && (one[at] ?? 0) < (two[at] ?? 0);
};

/** Whether an entry of the list names a package of the lock file. */
export const names = (bad: KnownBad, { name, version }: Locked): boolean =>
  bad.name === name &&
  isBelow(version, bad.below) &&
  (bad.from === undefined || !isBelow(version, bad.from));
