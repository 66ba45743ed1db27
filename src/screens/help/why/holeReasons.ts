import { wider, widestHung } from '../../../engine/posts/gateSlots.ts';
import type { Post } from '../../../engine/post.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import type { Site } from '../../../site/site.ts';
import {
  augerFor,
  augerSizes,
  holeDepth,
  holeDiameter,
  holeRule,
  squareHoleDiameter,
  squareHoleRule,
} from '../../../trade/footings.ts';
import { gatePostFor } from '../../../trade/gatePosts.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import { pipeSize } from '../../../units/pipeSize.ts';
import { shareOf } from './shareOf.ts';
import { ofTheBuild, type Reason } from './reason.ts';

/** The builds of the lines that a post serves. */
export const specsOf = ({ lines }: Pick<Post, 'lines'>, site: Site): readonly FenceSpec[] =>
  lines.flatMap((id) => {
    const spec = site.specs[site.lines[id]?.spec ?? 'spec:'];
    return spec === undefined ? [] : [spec];
  });

/** The widest leaf that turns on a gate at a post, inches; null for none. */
export const leafAt = ({ gates }: Pick<Post, 'gates'>, site: Site): Inches | null =>
  gates.reduce<Inches | null>((widest, id) => {
    const gate = site.gates[id];
    return gate === undefined ? widest : wider(widest, widestHung(gate));
  }, null);

/** What asks for a hole, and how large: 0 where it asks for nothing of that kind. */
interface Asks extends Reason {
  readonly diameter: Inches;
  readonly depth: Inches;
}

const ruleAsks = (post: Post, fabricHeight: Inches, { lengths }: Site): Asks[] => {
  const square = post.section === 'square';
  const least = square ? squareHoleDiameter(post.od) : holeDiameter(post.od);
  const source = (square ? squareHoleRule : holeRule).text;
  const bored = augerFor(least);
  const depth = holeDepth(fabricHeight);
  const size = pipeSize(post.od, lengths);
  const across = formatLength(least, { ...lengths, fraction: 16 });
  const times = shareOf(least, post.od);
  const none = inches(0);
  return [
    {
      says: square
        ? phrase`The post is ${size} square: ${times} times that, ${across} across, at least.`
        : phrase`The post is ${size} outside: ${times} times that, ${across} across, at least.`,
      source,
      diameter: none,
      depth: none,
    },
    {
      says: phrase`The smallest auger that bores that is ${formatLength(bored, lengths)}.`,
      source: augerSizes.text,
      diameter: bored,
      depth: none,
    },
    {
      says: phrase`A fence ${formatLength(fabricHeight, lengths)} high asks for a hole ${formatLength(depth, lengths)} deep.`,
      source: holeRule.text,
      diameter: none,
      depth,
    },
  ];
};

const leafAsks = (leaf: Inches | null, { lengths }: Site): Asks[] => {
  const row = leaf === null ? null : gatePostFor(leaf);
  if (leaf === null || row === null) return [];
  const { footingDiameter: diameter, footingDepth: depth, source } = row;
  return [
    {
      says: phrase`For a leaf of ${formatLength(leaf, lengths)} the table has a hole ${formatLength(diameter, lengths)} across and ${formatLength(depth, lengths)} deep.`,
      source: source.text,
      diameter,
      depth,
    },
  ];
};

const buildAsks = (least: Inches, { lengths }: Site): Asks[] =>
  least === 0
    ? []
    : [
        {
          says: phrase`No hole of this build is less than ${formatLength(least, lengths)} deep.`,
          source: ofTheBuild,
          diameter: inches(0),
          depth: least,
        },
      ];

/** All that asks for the hole of a post in the ground. */
const allAsks = (post: Post, site: Site): readonly Asks[] => {
  const specs = specsOf(post, site);
  const most = (of: 'fabricHeight' | 'leastDepth') =>
    inches(Math.max(0, ...specs.map((spec) => spec[of])));
  return [
    ...ruleAsks(post, most('fabricHeight'), site),
    ...leafAsks(leafAt(post, site), site),
    ...buildAsks(most('leastDepth'), site),
  ];
};

/**
 * Why the hole of a post is so wide and so deep: all that asks for one, of which the most counts. Of a post on a
 * wall, and of one whose hole follows from something else, where its hole is from.
 */
export const holeReasons = (post: Post, site: Site): readonly Reason[] => {
  const { hole, wall } = post;
  const asks = allAsks(post, site);
  const diameter = Math.max(...asks.map((one) => one.diameter));
  const depth = Math.max(...asks.map((one) => one.depth));
  if (wall !== null || diameter !== hole.diameter || depth !== hole.depth)
    return [
      {
        says:
          wall === null
            ? phrase`It has a hole of its own.`
            : phrase`It stands on a wall or kerb and not in the ground.`,
        source: hole.source,
      },
    ];
  return asks.map(({ says, source }) => ({ says, source }));
};
