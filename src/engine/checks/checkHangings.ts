import type { Site } from '../../site/site.ts';
import { bendingSource } from '../../trade/windTerms.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { leafHangings, type LeafHanging } from '../structure/leafHangings.ts';
import { plantedAt, saidOf, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';

/** A latch side that comes down by more than this no longer meets its latch, inches; ours, no published source. */
const mostSag = inches(1 / 2);

const flagsFor = (hanging: LeafHanging, laid: LaidLines, site: Site): GateFlag[] => {
  const { pounds, moment, capacity, sag, post } = hanging;
  const tag = laid.posts[post]?.tag ?? '?';
  const leaf = `a leaf of about ${Math.round(pounds)} lb on post ${tag}`;
  return [
    ...(moment <= capacity
      ? []
      : [
          {
            level: 'settle' as const,
            rule: 'gate post bends under its leaf',
            message: `${leaf} bends it by ${Math.ceil((100 * moment) / capacity)} % of what it may bear: expected a stronger post (${bendingSource.text}).`,
          },
        ]),
    ...(sag <= mostSag
      ? []
      : [
          {
            level: 'caution' as const,
            rule: 'leaf sags at the latch',
            message: `${leaf} brings its latch side down by ${formatLength(sag, fineStyle(site.lengths))} as the post bends: expected ${formatLength(mostSag, fineStyle(site.lengths))} at most, by a stronger post or a brace to the next post.`,
          },
        ]),
  ];
};

/** Gate posts that bend too far under the leaves that hang from them. */
export const checkHangings = (site: Site, laid: LaidLines): Flag[] =>
  Object.values<GateLayout>(laid.gates).flatMap((gate) =>
    plantedAt(
      gate,
      saidOf(
        gateName(site, gate.id),
        leafHangings(site, gate, laid.posts).flatMap((hanging) => flagsFor(hanging, laid, site)),
      ),
    ),
  );
