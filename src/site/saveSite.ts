import type { Site } from './site.ts';

/** The same value with the keys of every object in plain string order. */
const sorted = (value: unknown): unknown => {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(sorted);
  const entries = Object.entries(value) as [string, unknown][];
  // every key of a site is a field or an id, so none of them is a prototype's name
  return Object.fromEntries(
    entries.toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([key, inner]) => [key, sorted(inner)]),
  );
};

/**
 * A site as the text of a file: JSON with sorted keys and a newline at the end, so that one
 * document always gives the same bytes and two versions differ only where the site does.
 */
export const saveSite = (site: Site): string => `${JSON.stringify(sorted(site), null, 2)}\n`;
