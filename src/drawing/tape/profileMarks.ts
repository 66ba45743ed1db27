import { isTerminal } from '../../engine/post.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { Atom } from '../atom.ts';
import { brokenAt, type Breaks } from '../explode/brokenAt.ts';
import { polylineOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { yAt, type ProfileScale } from './profileScale.ts';
import type { Height, PostStanding, ProfileView } from './profileView.ts';

const pens = {
  ground: { ink: 'ground', width: 0.018, dash: [] },
  fabric: { ink: 'fence', width: 0.008, dash: [] },
  terminal: { ink: 'post', width: 0.026, dash: [] },
  line: { ink: 'post', width: 0.012, dash: [] },
  base: { ink: 'line', width: 0.007, dash: [] },
  rim: { ink: 'dimension', width: 0.006, dash: [0.03, 0.03] },
} as const;

/** Ground from its surface down to the base line. */
const groundMarks = (ground: readonly PaperPoint[], base: number): Atom[] => {
  const [first, last] = [ground.at(0), ground.at(-1)];
  if (first === undefined || last === undefined) return [];
  const feet = [
    { x: last.x, y: base },
    { x: first.x, y: base },
  ];
  return [
    {
      do: 'fill',
      ink: 'ground',
      opacity: 0.16,
      outline: polylineOutline([...ground, ...feet], true),
    },
    { do: 'stroke', pen: pens.ground, outline: polylineOutline(ground, false) },
  ];
};

const fabricMarks = (bottom: readonly PaperPoint[], top: readonly PaperPoint[]): Atom[] => [
  {
    do: 'fill',
    ink: 'fence',
    opacity: 0.1,
    outline: polylineOutline([...bottom, ...top.toReversed()], true),
  },
  {
    do: 'stroke',
    pen: pens.fabric,
    outline: [...polylineOutline(bottom, false), ...polylineOutline(top, false)],
  },
];

/**
 * The lines of a profile from `x` to `end`, paper inches: its base line, the ground, the fabric with
 * its steps, openings tinted from post to post, posts, and the rims of what is not known. Edges of fabric are
 * broken for letters.
 */
export const profileMarks = (
  { ground, unknown, fabric, openings, posts }: ProfileView,
  scale: ProfileScale,
  { x, end, top, breaks }: { x: number; end: number; top: number; breaks: Breaks },
): Atom[] => {
  const at = ({ x: along, z }: Height): PaperPoint => ({ x: along, y: yAt(scale, z) });
  const upright = ({ x: along, z, top: tip }: PostStanding) =>
    [at({ x: along, z }), at({ x: along, z: tip })] as const;
  const { base } = scale;
  const rims = unknown.flatMap(({ from, to }) => [from, to]).filter((rim) => rim > x && rim < end);
  return [
    ...ground.flatMap((part) => groundMarks(part.map(at), base)),
    ...openings.map(([from, to]): Atom => {
      const [[low, high], [lowTo, highTo]] = [upright(from), upright(to)];
      const outline = polylineOutline([low, high, highTo, lowTo], true);
      return { do: 'fill', ink: 'gate', opacity: 0.14, outline };
    }),
    ...fabric.flatMap(({ bottom, top: edge }) =>
      brokenAt(fabricMarks(bottom.map(at), edge.map(at)), breaks),
    ),
    ...posts.map((post): Atom => {
      const pen = isTerminal(post.post) ? pens.terminal : pens.line;
      return { do: 'stroke', pen, outline: segmentsOutline([upright(post)]) };
    }),
    {
      do: 'stroke',
      pen: pens.rim,
      outline: segmentsOutline(
        rims.map((rim) => [
          { x: rim, y: top },
          { x: rim, y: base },
        ]),
      ),
    },
    {
      do: 'stroke',
      pen: pens.base,
      outline: segmentsOutline([
        [
          { x, y: base },
          { x: end, y: base },
        ],
      ]),
    },
  ];
};
