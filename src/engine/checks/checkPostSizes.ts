import { slack } from '../../geometry/tolerance.ts';
import { isWoven } from '../../site/isWoven.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Leaf } from '../../site/gate.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import { roundPost } from '../../site/roundPost.ts';
import type { Site } from '../../site/site.ts';
import { postsForHeight, type PostSizes } from '../../trade/fencePosts.ts';
import { gatePostFor, gatePostSizes } from '../../trade/gatePosts.ts';
import { rollerPost } from '../../trade/gateStands.ts';
import { frameFor, frameRule } from '../../trade/gateFrames.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout } from '../layout.ts';
import type { Mend } from '../mend.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { hungFrom } from '../gate/hungFrom.ts';
import { firstLines } from '../structure/firstLines.ts';
import { plantedAt, saidOf, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';
import { asItIs, joined, phrase } from '../../phrases/phrase.ts';

const uses = [
  [phrase`line posts`, 'linePost', 'line'],
  [phrase`terminal posts`, 'terminalPost', 'terminal'],
] as const;

/** Which posts of a build are thinner than those of the table for its height. */
const thinIn = (spec: FenceSpec, sizes: PostSizes, { lengths }: Site): string[] =>
  uses.flatMap(([use, own, usual]) => {
    const [is, has] = [spec[own].od, sizes[usual].od];
    if (is >= has - slack) return [];
    return [phrase`${use} ${pipeSize(is, lengths)} outside, there ${pipeSize(has, lengths)}`];
  });

const buildFlags = (site: Site, laid: LaidLines): Flag[] =>
  [...firstLines(site, laid)].flatMap(([id, line]): Flag[] => {
    const spec = site.specs[id];
    const at = laid.lines[line]?.legs[0]?.start;
    // the table is of chain link
    const sizes = spec === undefined || !isWoven(spec) ? null : postsForHeight(spec.fabricHeight);
    if (spec === undefined || at === undefined || sizes === null) return [];
    const thin = thinIn(spec, sizes, site);
    if (thin.length === 0) return [];
    const message = phrase`${asItIs(spec.label)}, ${formatLength(spec.fabricHeight, site.lengths)} high, has thinner posts than the table for that height: ${joined(thin, '; ')} (${sizes.source.text}).`;
    const place = { kind: 'line', id: line } as const;
    return [{ level: 'caution', rule: 'posts thinner than usual', place, at, message }];
  });

const gateFlags = (gate: GateLayout, site: Site, laid: LaidLines): GateFlag[] =>
  gate.leaves.flatMap((leaf, n): GateFlag[] => {
    const post = laid.posts.get(hungFrom(site.gates[gate.id], gate, n) ?? 'post:');
    if (post === undefined) return [];
    const row = gatePostFor(leaf.width);
    const wide = formatLength(leaf.width, fineStyle(site.lengths));
    const [source] = gatePostSizes.map((one) => one.source.text);
    if (row === null) {
      const message = phrase`a leaf of ${wide} is wider than the table of gate posts goes (${source ?? ''}): its posts are for a licensed professional to say.`;
      return [{ level: 'settle', rule: 'leaf wider than the table', message }];
    }
    if (post.section === 'square') {
      const message = phrase`post ${post.tag}, ${pipeSize(post.od, site.lengths)} square, carries a leaf of ${wide}: the table of gate posts is of round pipe (${row.source.text}); hinges and latch have to be made for a square post.`;
      return [{ level: 'caution', rule: 'leaf on a square post', message }];
    }
    if (post.od >= row.post.od - slack) return [];
    const mend: Mend = {
      kind: 'gate posts',
      gate: gate.id,
      post: roundPost(row.post),
    };
    const message = phrase`post ${post.tag}, ${pipeSize(post.od, site.lengths)} outside, carries a leaf of ${wide}, for which the table has ${pipeSize(row.post.od, site.lengths)} (${row.source.text}).`;
    return [{ level: 'caution', rule: 'gate post thinner than the table', message, mend }];
  });

/** Roller posts of a leaf that rolls, once a gate. */
const rollerFlags = (gate: GateLayout, site: Site, laid: LaidLines): GateFlag[] => {
  if (gate.slides.length === 0) return [];
  const thin = laid.stands.find(
    ({ kind, gates, od }) =>
      kind === 'roller' && gates.includes(gate.id) && od < rollerPost.post.od - slack,
  );
  if (thin === undefined) return [];
  const message = phrase`roller post ${thin.tag} is ${pipeSize(thin.od, site.lengths)} outside: the table has ${pipeSize(rollerPost.post.od, site.lengths)} (${rollerPost.source.text}).`;
  return [{ level: 'caution', rule: 'roller post thinner than the table', message }];
};

/** Frames that are thinner than the table has them for their leaf. */
const frameFlags = (gate: GateLayout, site: Site): GateFlag[] =>
  Object.values<Leaf>(site.gates[gate.id]?.leaves ?? {}).flatMap((leaf): GateFlag[] => {
    const usual = frameFor(leafWidth(leaf), leaf.height);
    if (leaf.frame === null || leaf.frame.od >= usual.od - slack) return [];
    const message = phrase`a leaf of ${formatLength(leafWidth(leaf), fineStyle(site.lengths))} has a frame ${pipeSize(leaf.frame.od, site.lengths)} outside, for which the table has ${pipeSize(usual.od, site.lengths)} (${frameRule.text}).`;
    return [{ level: 'caution', rule: 'frame thinner than the table', message }];
  });

/**
 * Posts and frames that are thinner than those of the tables: line and terminal posts of a build for its height,
 * once at its first line, gate posts and frames for the leaf that hangs from them, posts on which a leaf rolls. A fence higher than the table is not
 * compared.
 */
export const checkPostSizes = (site: Site, laid: LaidLines): Flag[] => [
  ...buildFlags(site, laid),
  ...Object.values<GateLayout>(laid.gates).flatMap((gate) =>
    plantedAt(
      gate,
      saidOf(gateName(site, gate.id), [
        ...gateFlags(gate, site, laid),
        ...rollerFlags(gate, site, laid),
        ...frameFlags(gate, site),
      ]),
    ),
  ),
];
