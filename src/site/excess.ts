import { placeLine } from './issueLine.ts';
import { limits, mapNames } from './limits.ts';
import { phrase } from '../phrases/phrase.ts';

type Found = { readonly value: object; readonly path: readonly string[] };

/**
 * What makes a value too large or too odd to be read as a site, as one line, else null: objects
 * nested too deep (or in a ring), a name that would touch a prototype, a map with too many entries.
 * Works on any value and never recurses.
 */
export const excess = (root: unknown): string | null => {
  if (typeof root !== 'object' || root === null) return null;
  const open: Found[] = [{ value: root, path: [] }];
  for (let found = open.pop(); found !== undefined; found = open.pop()) {
    const fault = faultOf(found);
    if (fault !== null) return fault;
    for (const [key, value] of Object.entries(found.value) as [string, unknown][]) {
      if (typeof value === 'object' && value !== null) {
        open.push({ value, path: [...found.path, key] });
      }
    }
  }
  return null;
};

const faultOf = ({ value, path }: Found): string | null => {
  const place = placeLine(path) || phrase`site file`;
  if (path.length > limits.depth) {
    return phrase`${placeLine(path.slice(0, 3))}: expected at most ${limits.depth} objects in one another, found more`;
  }
  if (Object.hasOwn(value, '__proto__')) {
    return phrase`${place}: expected no field of that name, found "__proto__"`;
  }
  const most = mostIn(path);
  const count = Object.keys(value).length;
  return count <= most ? null : phrase`${place}: expected at most ${most} entries, found ${count}`;
};

const mostIn = (path: readonly string[]): number => {
  const map = path.length === 1 ? mapNames.find((name) => name === path[0]) : undefined;
  return map === undefined ? limits.path : limits[map];
};
