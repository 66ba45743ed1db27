import type { MarkId } from '../../site/ids.ts';
import type { Observation } from '../../site/observation.ts';
import type { Site } from '../../site/site.ts';
import type { Layout } from '../layout.ts';
import { markName } from './markName.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Which observation it is, by its marks: `House corner 1 to post B`, `square corner at post C`. */
export const observationName = (site: Site, posts: Layout['posts'], seen: Observation): string => {
  const name = (id: MarkId): string => markName(site, posts, id);
  switch (seen.kind) {
    case 'tape':
      return phrase`${name(seen.from)} to ${name(seen.to)}`;
    case 'bearing':
      return phrase`the way from ${name(seen.from)} to ${name(seen.to)}`;
    case 'square':
      return phrase`square corner at ${name(seen.at)}`;
    case 'straight':
      return phrase`${name(seen.at)} in line with ${name(seen.from)} and ${name(seen.to)}`;
    case 'offset':
      return phrase`${name(seen.at)} square off the line ${name(seen.from)} to ${name(seen.to)}`;
    case 'parallel':
      return phrase`${name(seen.at)} and ${name(seen.other)} equally far off the line ${name(seen.from)} to ${name(seen.to)}`;
    case 'fix':
      return phrase`${name(seen.mark)} by GPS`;
  }
};
