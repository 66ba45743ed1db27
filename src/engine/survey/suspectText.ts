import type { Observation } from '../../site/observation.ts';
import type { Site } from '../../site/site.ts';
import { formatAngle } from '../../units/formatAngle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import type { Layout } from '../layout.ts';
import { azimuthText, figureOf } from './figureOf.ts';
import { observationName } from './observationName.ts';
import type { Suspect } from './survey.ts';
import { joined, phrase, sentenceCase } from '../../phrases/phrase.ts';

/** What an observation reads and what it would by all others, as `reads A, everything else says B`. */
const figures = (site: Site, seen: Observation, expects: number): string => {
  const length = (value: number): string => formatLength(inches(value), site.lengths);
  const says = (reads: string, other: string): string =>
    phrase`reads ${reads}, everything else says ${other}`;
  switch (seen.kind) {
    case 'tape':
      return says(length(seen.length), length(expects));
    case 'offset':
      return says(length(Math.abs(seen.distance)), length(Math.abs(expects)));
    case 'bearing':
      return says(azimuthText(seen.bearing), azimuthText(expects));
    case 'square':
      return phrase`is told square, everything else says ${formatAngle(radians(Math.abs(expects)))}`;
    case 'straight':
    case 'parallel':
      return phrase`is told so, everything else says ${length(Math.abs(expects))} off`;
    case 'fix':
      return phrase`everything else says ${length(Math.abs(expects))} off`;
  }
};

/** Which observation it is and what it reads, so that two of the same marks are told apart. */
const read = (site: Site, posts: Layout['posts'], seen: Observation): string => {
  const figure = figureOf(seen, site.lengths);
  const name = observationName(site, posts, seen);
  return figure === '' ? name : phrase`${name} at ${figure}`;
};

/** The reading that is most likely wrong, and what to do about it, in one line. */
export const suspectText = (
  site: Site,
  posts: Layout['posts'],
  { ids, expects }: Suspect,
): string => {
  const [first, ...others] = ids.flatMap((id) => site.observations[id] ?? []);
  if (first === undefined) return '';
  const again =
    first.kind === 'tape' || first.kind === 'offset' ? phrase`tape it again` : phrase`look again`;
  const said = phrase`${sentenceCase(observationName(site, posts, first))} ${figures(site, first, expects)}: ${again}`;
  if (others.length === 0) return said;
  const also = joined(
    others.map((seen) => read(site, posts, seen)),
    phrase`; or `,
  );
  return phrase`${said}; or ${also}, which cannot be told from it`;
};
