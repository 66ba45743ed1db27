import type { MapName } from './limits.ts';
import { quoted } from './quoted.ts';
import type { Site } from './site.ts';
import { phrase } from '../phrases/phrase.ts';

/** What one of the maps of a site holds. */
export type Entry<Name extends MapName> = Site[Name][keyof Site[Name]];

const nouns: Readonly<Record<MapName, string>> = {
  marks: phrase`a mark`,
  lines: phrase`a fence line`,
  gates: phrase`a gate`,
  features: phrase`a feature`,
  pins: phrase`a pin`,
  shots: phrase`a grade shot`,
  observations: phrase`an observation`,
  acceptances: phrase`an acceptance`,
  townRules: phrase`a rule of a town`,
  alternatives: phrase`an alternative`,
  offcuts: phrase`a length from the yard`,
  underlays: phrase`a picture`,
  pictures: phrase`a picture kept in the file`,
  specs: phrase`a fence spec`,
  hardware: phrase`a hinge or latch`,
};

/** What a site holds under an id. RangeError with one line when it holds nothing there. */
export const entry = <Name extends MapName>(
  site: Site,
  name: Name,
  id: keyof Site[Name],
): Entry<Name> => {
  const map = site[name];
  if (Object.hasOwn(map, id)) return map[id];
  throw new RangeError(phrase`${name}: expected ${nouns[name]} of this site, found ${quoted(id)}`);
};
