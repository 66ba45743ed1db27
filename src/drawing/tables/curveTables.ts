import type { Layout, LineLayout, Run } from '../../engine/layout.ts';
import { stationInPlan } from '../../engine/posts/stationInPlan.ts';
import { tapeReadings } from '../../engine/posts/tapeReadings.ts';
import { cross } from '../../geometry/cross.ts';
import { distance } from '../../geometry/distance.ts';
import { dot } from '../../geometry/dot.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { subtract } from '../../geometry/subtract.ts';
import { arcOf, trackAt } from '../../geometry/track.ts';
import { unitVector } from '../../geometry/unitVector.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { runName } from '../plan/runName.ts';
import type { Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';
import { sideWords } from './sideWords.ts';

/** Where the posts of a curve stand by its chord, and how it is named. */
export interface CurveTable {
  /** Its radius, chord, middle ordinate and length, as one text. */
  readonly text: string;
  readonly table: Table;
}

/** Where a place lies by the chord of a run told from the hook: along it, and off it. */
const byChord = (run: Run, at: SitePoint, hook: 'start' | 'end') => {
  const [near, far] = hook === 'start' ? [run.start, run.end] : [run.end, run.start];
  const way = unitVector(near, far) ?? { x: 1, y: 0 };
  const off = subtract(at, near);
  return { along: dot(off, way), off: Math.abs(cross(way, off)) };
};

const curveTable = (run: Run, layout: Layout, site: Site): CurveTable[] => {
  const arc = arcOf(run);
  if (arc === null) return [];
  const hook = site.lines[run.line]?.hook ?? 'start';
  const write = (length: number): string => formatLength(inches(length), site.lengths);
  const { posts } = tapeReadings(run, hook, site.lengths);
  const stations = new Map(run.posts.map(({ post, station }) => [post, station]));
  const places = posts.map(({ post }) =>
    trackAt(run, stationInPlan(run, stations.get(post) ?? inches(0))),
  );
  const side = run.bow > 0 === (hook === 'start') ? sideWords.left : sideWords.right;
  const [radius, chord] = [write(arc.radius), write(distance(run.start, run.end))];
  const [bow, long] = [write(Math.abs(run.bow)), write(run.length)];
  const text = phrase`${runName(run, layout)} is a curve to the ${side} of its chord, seen from the hook: radius ${radius}, chord ${chord}, middle ordinate ${bow}, along it ${long}. Pull a line from end to end; each post stands so far along it, so far off it.`;
  const rows = posts.map(({ post, reading }, n) => {
    const at = places[n] ?? run.start;
    const { along, off } = byChord(run, at, hook);
    const before = places[n - 1];
    return [
      layout.posts.get(post)?.tag ?? '?',
      formatLength(reading, site.lengths),
      write(along),
      write(off),
      before === undefined ? '' : write(distance(before, at)),
    ];
  });
  const table: Table = {
    title: phrase`${runName(run, layout)}, set out from its chord`,
    columns: [
      { heading: phrase`Post`, align: 'left', share: 1 },
      { heading: phrase`Tape reads, along the curve`, align: 'right', share: 1 },
      { heading: phrase`Along the chord`, align: 'right', share: 1 },
      { heading: phrase`Off the chord`, align: 'right', share: 1 },
      { heading: phrase`Straight from the last`, align: 'right', share: 1 },
    ],
    rows,
  };
  return [{ text, table }];
};

/**
 * What the curves of a line are set out by: for each its figures, and for each of its posts the places
 * along and off its chord from the hook and the straight length from the post before. None for a line
 * without curves.
 */
export const curveTables = (line: LineLayout, layout: Layout, site: Site): CurveTable[] =>
  line.runs.flatMap((run) => curveTable(run, layout, site));
