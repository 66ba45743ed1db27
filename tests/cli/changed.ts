import { sampleSite } from './sampleSites.ts';

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const set = (root: unknown, path: readonly string[], value: unknown): void => {
  const [key = '', ...rest] = path;
  if (!isObject(root)) throw new Error(`no ${path.join('/')} in the sample`);
  if (rest.length > 0) return set(root[key], rest, value);
  root[key] = value;
};

/**
 * The text of the back yard with other values at some places, such as
 * `{ 'marks/mark:west/x': 0 }`. An error that names the place when nothing is there to hold it.
 */
export const changed = (values: Readonly<Record<string, unknown>>): string => {
  const site = JSON.parse(sampleSite('back-yard')) as unknown;
  for (const [path, value] of Object.entries(values)) set(site, path.split('/'), value);
  return JSON.stringify(site);
};
