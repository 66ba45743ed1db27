import { midpoint } from '../../geometry/midpoint.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { Run } from '../layout.ts';
import type { Chain } from '../posts/chain.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { lineName } from './names.ts';

/** A leg of a mile or more is likelier a slip of the finger than a fence; inches. */
const mile = inches(63_360);

const empty = (chain: Chain, site: Site): Flag[] => {
  if (chain.legs.length > 0) return [];
  const at = chain.stops[0]?.at ?? { x: 0, y: 0 };
  const message = `${lineName(site, chain.id)} has no leg: expected at least two marks apart from each other.`;
  const place = { kind: 'line', id: chain.id } as const;
  return [{ level: 'settle', rule: 'empty fence line', place, at, message }];
};

const doubled = (chain: Chain, site: Site): Flag[] =>
  chain.doubled.map(({ mark, at }) => ({
    level: 'settle',
    rule: 'two marks on one spot',
    place: { kind: 'mark', id: mark },
    at,
    message: `${lineName(site, chain.id)} has two marks on one spot: expected them apart; they count as one.`,
  }));

const longLegs = (chain: Chain, site: Site): Flag[] =>
  chain.legs.flatMap((leg): Flag[] => {
    if (leg.length < mile) return [];
    const length = formatLength(leg.length, site.lengths);
    return [
      {
        level: 'caution',
        rule: 'leg of a mile or more',
        place: { kind: 'leg', line: chain.id, id: leg.id },
        at: midpoint(leg.start, leg.end),
        message: `${lineName(site, chain.id)} has a leg of ${length}: check the reading, expected less than a mile.`,
      },
    ];
  });

const noRoom = (run: Run, { posts }: LaidLines, write: (length: Inches) => string): Flag[] =>
  run.spaces.flatMap((space, n): Flag[] => {
    const [a, b] = [posts[run.posts[n]?.post ?? 'post:'], posts[run.posts[n + 1]?.post ?? 'post:']];
    if (space.kind === 'gate' || a === undefined || b === undefined) return [];
    const missing = (a.hole.diameter + b.hole.diameter) / 2 - space.length;
    if (missing <= 1e-6) return [];
    const first = run.legs[0];
    if (first === undefined) return [];
    return [
      {
        level: 'stop',
        rule: 'no room between posts',
        place: { kind: 'leg', line: run.line, id: first },
        at: midpoint(a.at, b.at),
        message: `Posts ${a.tag} and ${b.tag} stand ${write(space.length)} apart: their holes need ${write(inches(missing))} more.`,
      },
    ];
  });

/** What there is to say about each fence line: empty, doubled marks, endless legs, posts too close. */
export const checkLines = (site: Site, laid: LaidLines): Flag[] => {
  const write = (length: Inches): string => formatLength(length, site.lengths);
  const runs = Object.values(laid.lines).flatMap(({ runs: own }) => own);
  return [
    ...laid.chains.flatMap((chain) => [
      ...empty(chain, site),
      ...doubled(chain, site),
      ...longLegs(chain, site),
    ]),
    ...runs.flatMap((run) => noRoom(run, laid, write)),
  ];
};
