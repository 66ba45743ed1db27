import { checked } from './checked.ts';
import type { Entry } from './entry.ts';
import { kept } from './kept.ts';
import { limits } from './limits.ts';
import type { MapName } from './limits.ts';
import { siteSchema } from './site.ts';
import type { Site } from './site.ts';
import { phrase } from '../phrases/phrase.ts';

/** Entries of one of the maps by their ids. */
export type Entries<Name extends MapName> = Readonly<
  Partial<Record<keyof Site[Name], Entry<Name>>>
>;

/**
 * A site with these entries added or exchanged; the same site when they say what it says already.
 * RangeError with one line for an entry that does not fit the document, and for one too many.
 */
export const withEntries = <Name extends MapName>(
  site: Site,
  name: Name,
  entries: Entries<Name>,
): Site => {
  const fresh = checked(siteSchema.shape[name], entries, [name]);
  const shared = Object.entries(fresh).map(
    ([id, value]) => [id, kept((site[name] as Record<string, unknown>)[id], value)] as const,
  );
  const before = site[name] as Readonly<Record<string, unknown>>;
  const changes = shared.filter(([id, value]) => before[id] !== value);
  if (changes.length === 0) return site;
  const map = { ...before, ...Object.fromEntries(changes) };
  const grown = changes.some(([id]) => !Object.hasOwn(before, id));
  const count = grown ? Object.keys(map).length : 0;
  if (count > limits[name]) {
    throw new RangeError(phrase`${name}: expected at most ${limits[name]} entries, found ${count}`);
  }
  return { ...site, [name]: map };
};

/** A site with one entry added or exchanged; as `withEntries`. */
export const withEntry = <Name extends MapName>(
  site: Site,
  name: Name,
  ...[id, value]: readonly [keyof Site[Name], Entry<Name>]
): Site => withEntries(site, name, { [id]: value } as unknown as Entries<Name>);

/** A site without these entries; the same site when it has none of them. */
export const withoutEntries = (site: Site, name: MapName, ids: readonly string[]): Site => {
  const gone = new Set(ids.filter((id) => Object.hasOwn(site[name], id)));
  if (gone.size === 0) return site;
  const rest = Object.entries(site[name]).filter(([id]) => !gone.has(id));
  return { ...site, [name]: Object.fromEntries(rest) };
};
