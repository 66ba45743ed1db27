import type { Layout, LineLayout, Run } from '../../engine/layout.ts';
import { trackAt, trackBearing } from '../../geometry/track.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Site } from '../../site/site.ts';
import { inches } from '../../units/inches.ts';
import { plainLength } from '../../units/plainLength.ts';
import { radians } from '../../units/radians.ts';
import { chainSide } from '../plan/chainSide.ts';
import { yardMiddle } from '../plan/yardMiddle.ts';
import type { Primitive } from '../primitive.ts';
import { phrase } from '../../phrases/phrase.ts';

/** From a fence to the line of its length, paper inches. */
const off = 0.3;

/** What a length is called that finds no room. */
const called = phrase`a length of`;

/** The length of a curve, outside its middle. */
const onCurve = (run: Run, text: string): Primitive => {
  const along = trackBearing(run, run.length / 2);
  const side = Math.sign(run.bow);
  return {
    kind: 'text',
    at: trackAt(run, run.length / 2),
    text,
    size: 0.145,
    rise: 0.06,
    angle: radians(0),
    ink: 'dimension',
    weight: 'regular',
    beside: { way: { x: -side * Math.sin(along), y: side * Math.cos(along) }, taken: 0 },
    name: phrase`a length of ${text}`,
  };
};

const overall = (run: Run, layout: Layout, how: { text: string; side: 1 | -1 }): Primitive[] => {
  const [first, last] = [run.posts[0], run.posts.at(-1)];
  const points = [first, last].flatMap((end): SitePoint[] => {
    const post = end === undefined ? undefined : layout.posts.get(end.post);
    return post === undefined ? [] : [post.at];
  });
  if (points.length < 2) return [];
  if (run.bow !== 0) return [onCurve(run, how.text)];
  return [
    {
      kind: 'dimension chain',
      points,
      texts: [how.text],
      total: null,
      off: how.side * off,
      name: called,
    },
  ];
};

/**
 * How long every straight or curved piece of a fence is from its first post to its last, gates included:
 * a dimension beside what is straight, a text outside what is curved.
 */
export const overallLengths = (site: Site, layout: Layout): readonly Primitive[] => {
  const lines = Object.values<LineLayout>(layout.lines);
  const middle = yardMiddle(lines, site);
  return lines.flatMap((line) => {
    const side = chainSide(line, middle);
    return line.runs.flatMap((run) => {
      const [first, last] = [run.posts[0]?.station ?? 0, run.posts.at(-1)?.station ?? 0];
      const text = plainLength(inches(last - first), site.lengths.system);
      return overall(run, layout, { text, side });
    });
  });
};
