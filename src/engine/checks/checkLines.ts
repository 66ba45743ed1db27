import { midpoint } from '../../geometry/midpoint.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { Leg } from '../layout.ts';
import type { Chain } from '../posts/chain.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { mostLinePosts } from '../posts/unfilledOf.ts';
import { lineName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A leg of a mile or more is likelier a slip of the finger than a fence; inches. */
const mile = inches(63_360);

const empty = (chain: Chain, site: Site): Flag[] => {
  if (chain.legs.length > 0) return [];
  const at = chain.stops[0]?.at ?? { x: 0, y: 0 };
  const message = phrase`${lineName(site, chain.id)} has no leg: expected at least two marks apart from each other.`;
  const place = { kind: 'line', id: chain.id } as const;
  return [{ level: 'settle', rule: 'empty fence line', place, at, message }];
};

const isLong = ({ length }: Leg): boolean => length >= mile;

const longLegs = (chain: Chain, site: Site): Flag[] =>
  chain.legs.filter(isLong).map((leg): Flag => {
    const length = formatLength(leg.length, site.lengths);
    return {
      level: 'caution',
      rule: 'leg of a mile or more',
      place: { kind: 'leg', line: chain.id, id: leg.id },
      at: midpoint(leg.start, leg.end),
      message: phrase`${lineName(site, chain.id)} has a leg of ${length}: check the reading, expected less than a mile.`,
    };
  });

const noLinePosts = (chain: Chain, { unfilled }: LaidLines, site: Site): Flag[] => {
  const why = unfilled.get(chain.id);
  const spec = site.specs[chain.line.spec];
  const at = chain.stops[0]?.at;
  if (why === undefined || spec === undefined || at === undefined) return [];
  const name = lineName(site, chain.id);
  const bay = formatLength(spec.maxBay, site.lengths);
  const message =
    why === 'too many posts'
      ? phrase`${name} takes more line posts than are laid out (${mostLinePosts} a site): check its readings and its largest bay (${bay}).`
      : phrase`${name}: the largest bay (${bay}) is shorter than the hole of a line post: expected a longer one; no line posts are laid out.`;
  return [{ level: 'stop', rule: why, place: { kind: 'line', id: chain.id }, at, message }];
};

/** What there is to say about each fence line: empty, endless legs, no line posts. */
export const checkLines = (site: Site, laid: LaidLines): Flag[] =>
  laid.chains.flatMap((chain) => [
    ...empty(chain, site),
    ...longLegs(chain, site),
    ...noLinePosts(chain, laid, site),
  ]);
