import type { Site } from '../../site/site.ts';
import { detailLook } from './detailLabel.ts';
import { joined, type DetailPart } from './detailPart.ts';
import { shortText, sizeText } from './detailTexts.ts';
import { levelDimension, uprightDimension } from './dimension.ts';
import type { GateSight, SightPost } from './gateSight.ts';
import type { OnPaper } from './onPaper.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Along the gate and up, inches: all that is drawn of an elevation. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

/** From what is drawn to the first line of dimensions, and from one to the next; paper inches. */
const first = 0.2;
const next = 0.5;

interface Page {
  readonly sight: GateSight;
  readonly site: Site;
  readonly on: OnPaper;
  readonly extent: Extent;
}

/** Every leaf from side to side of its frame, over the gate; of one that rolls its tail on another line. */
const widthSizes = ({ sight, site, on, extent }: Page): DetailPart[] => {
  const line = on({ x: 0, y: extent.top }).y - first;
  const leaves = sight.leaves.map(({ from, to, laid, bottom, height }) =>
    levelDimension({
      ends: [on({ x: from, y: bottom + height }), on({ x: to, y: bottom + height })],
      line,
      look: detailLook(phrase`leaf ${sizeText(laid.width, site)}`),
      side: -1,
    }),
  );
  const slides = sight.slides.flatMap(({ closed: [tail, front], face, laid, bottom, height }) => {
    const y = bottom + height;
    const behind = Math.abs(face - tail);
    const whole = {
      ends: [on({ x: tail, y }), on({ x: front, y })],
      line: line - next,
      look: detailLook(phrase`whole leaf ${sizeText(laid.width, site)}`),
      side: -1,
    } as const;
    const own = {
      ends: [on({ x: tail, y }), on({ x: face, y })],
      line,
      look: detailLook(phrase`past the face ${sizeText(behind, site)}`),
      side: -1,
    } as const;
    return behind === 0 ? [levelDimension(whole)] : [levelDimension(whole), levelDimension(own)];
  });
  return [...leaves, ...slides];
};

/** How high a post stands and how deep its hole is, on an upright line beside the gate. */
const postSizes = (
  { post, at, base }: SightPost,
  { site, on }: Page,
  { line, side }: { readonly line: number; readonly side: 1 | -1 },
): DetailPart[] => {
  const edge = at.x + (side * post.od) / 2;
  const rim = at.x + (side * post.hole.diameter) / 2;
  const above = uprightDimension({
    ends: [on({ x: edge, y: base + post.above }), on({ x: rim, y: base })],
    line,
    look: detailLook(sizeText(post.above, site)),
    side,
  });
  if (post.hole.depth === 0) return [above];
  const deep = uprightDimension({
    ends: [on({ x: rim, y: base }), on({ x: rim, y: base - post.hole.depth })],
    line,
    look: detailLook(shortText(post.hole.depth, site)),
    side,
  });
  return [above, deep];
};

/** How high a leaf is, and how high it hangs over the ground at the higher post. */
const leafSizes = ({ sight, site, on }: Page, line: number): DetailPart[] => {
  const hung = [...sight.leaves, ...sight.slides].at(-1);
  if (hung === undefined) return [];
  const ends = 'closed' in hung ? hung.closed : ([hung.from, hung.to] as const);
  const x = Math.max(...ends);
  const { bottom, height } = hung;
  const size = shortText(bottom, site);
  const said = sight.gate.bottom === null ? phrase`${size} at most` : phrase`${size} clear`;
  const room = uprightDimension({
    ends: [on({ x, y: bottom }), on({ x, y: 0 })],
    line,
    look: detailLook(said),
    side: 1,
  });
  const high = uprightDimension({
    ends: [on({ x, y: bottom + height }), on({ x, y: bottom })],
    line,
    look: detailLook(sizeText(height, site)),
    side: 1,
  });
  return bottom === 0 ? [high] : [high, room];
};

/**
 * The dimensions round an elevation: leaf widths over it, its first post on the left, leaf height and clearance
 * on the right.
 */
export const elevationSizes = (page: Page): DetailPart => {
  const { sight, on, extent } = page;
  const left = on({ x: extent.left, y: 0 }).x - first;
  const right = on({ x: extent.right, y: 0 }).x + first;
  return joined([
    ...widthSizes(page),
    ...postSizes(sight.pair[0], page, { line: left, side: -1 }),
    ...leafSizes(page, right),
  ]);
};
