import { slack } from '../../geometry/tolerance.ts';
import type { Site } from '../../site/site.ts';
import { bendingSource } from '../../trade/windTerms.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { shareText } from '../../units/shareText.ts';
import type { Carry } from '../carry/carry.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { soilOf } from '../structure/lateralOf.ts';
import { leafHangings, type LeafHanging } from '../structure/leafHangings.ts';
import { plantedAt, saidOf, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A latch side that comes down by more than this no longer meets its latch, inches; ours, no published source. */
const mostSag = inches(1 / 2);

const flagsFor = (hanging: LeafHanging, laid: LaidLines, site: Site): GateFlag[] => {
  const { pounds, moment, capacity, sag, post, asks, depth } = hanging;
  if (moment <= capacity && asks <= depth + slack && sag <= mostSag) return [];
  const say = (length: Inches): string => formatLength(length, fineStyle(site.lengths));
  const tag = laid.posts.get(post)?.tag ?? '?';
  const leaf = phrase`a leaf of about ${Math.round(pounds)} lb on post ${tag}`;
  return [
    ...(moment <= capacity
      ? []
      : [
          {
            level: 'settle' as const,
            rule: 'gate post bends under its leaf',
            message: phrase`${leaf} bends it by ${shareText(moment / capacity)} of what it may bear: expected a stronger post (${bendingSource.text}).`,
          },
        ]),
    ...(asks <= depth + slack
      ? []
      : [
          {
            level: 'settle' as const,
            rule: 'gate post hole shallow for its leaf',
            message: phrase`${leaf} asks for a hole ${say(asks)} deep, ${say(depth)} planned: by the pole formula for its moment in ${soilOf(site.conditions).lateral} psf a foot (IBC 1807.3.2.1).`,
          },
        ]),
    ...(sag <= mostSag
      ? []
      : [
          {
            level: 'caution' as const,
            rule: 'leaf sags at the latch',
            message: phrase`${leaf} brings its latch side down by ${say(sag)} as the post bends: expected ${say(mostSag)} at most, by a stronger post or a brace to the next post.`,
          },
        ]),
  ];
};

/** Gate posts that bend too far under the leaves that hang from them. */
export const checkHangings = (site: Site, laid: LaidLines, carry: Carry): Flag[] => {
  const known = carry.shelf<readonly LeafHanging[]>('what leaves do to their posts');
  return Object.values<GateLayout>(laid.gates).flatMap((gate) => {
    const { lines, gates, specs, conditions } = site;
    const posts = [gate.posts?.start, gate.posts?.end].map((id) => laid.posts.get(id ?? 'post:'));
    const from: unknown[] = [gate, gates[gate.id], lines[gate.line]?.spec, specs, conditions];
    for (const post of posts) {
      from.push(post);
      // the pipe of a post is as the builds and gates that it serves say it
      for (const id of post?.lines ?? []) from.push(lines[id]?.spec);
      for (const id of post?.gates ?? []) from.push(gates[id]);
    }
    const found = known.take(gate.id, from, () => leafHangings(site, gate, laid.posts));
    const flags = found.flatMap((hanging) => flagsFor(hanging, laid, site));
    return flags.length === 0 ? [] : plantedAt(gate, saidOf(gateName(site, gate.id), flags));
  });
};
