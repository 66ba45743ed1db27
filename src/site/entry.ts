import type { MapName } from './limits.ts';
import { quoted } from './quoted.ts';
import type { Site } from './site.ts';

/** What one of the maps of a site holds. */
export type Entry<Name extends MapName> = Site[Name][keyof Site[Name]];

const nouns: Readonly<Record<MapName, string>> = {
  marks: 'a mark',
  lines: 'a fence line',
  gates: 'a gate',
  features: 'a feature',
  pins: 'a pin',
  shots: 'a grade shot',
  observations: 'an observation',
  acceptances: 'an acceptance',
  townRules: 'a rule of a town',
  alternatives: 'an alternative',
  offcuts: 'a length from the yard',
  underlays: 'a picture',
  pictures: 'a picture kept in the file',
  specs: 'a fence spec',
  hardware: 'a hinge or latch',
};

/** What a site holds under an id. RangeError with one line when it holds nothing there. */
export const entry = <Name extends MapName>(
  site: Site,
  name: Name,
  id: keyof Site[Name],
): Entry<Name> => {
  const map = site[name];
  if (Object.hasOwn(map, id)) return map[id];
  throw new RangeError(`${name}: expected ${nouns[name]} of this site, found ${quoted(id)}`);
};
