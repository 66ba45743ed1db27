import type { GateLayout, Layout, LineLayout, Run } from '../../engine/layout.ts';
import { standsByGate, type Post } from '../../engine/post.ts';
import { fromHook } from '../../engine/posts/fromHook.ts';
import { cross } from '../../geometry/cross.ts';
import { dot } from '../../geometry/dot.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { nearestOnTrack, trackAt, trackBearing } from '../../geometry/track.ts';
import { subtract } from '../../geometry/subtract.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { roundLength } from '../../units/roundLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { runName } from '../plan/runName.ts';
import { gatePosts, gateTitle } from './gateKind.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { shortStyle } from './shortStyle.ts';
import { receiverText } from './receiverText.ts';
import { phrase } from '../../phrases/phrase.ts';
import { postWord } from './postWord.ts';

interface Beside {
  readonly run: Run;
  readonly gate: GateLayout;
  readonly layout: Layout;
  readonly site: Site;
}

/** How far along a run a thing stands square to it, and how far to its left; inches. */
const besideTrack = (run: Run, at: SitePoint): { along: number; left: number } => {
  const near = run.bow === 0 ? 0 : nearestOnTrack(at, run).along;
  const angle = run.bow === 0 ? run.bearing : trackBearing(run, near);
  const way = { x: Math.cos(angle), y: Math.sin(angle) };
  const off = subtract(at, run.bow === 0 ? run.start : trackAt(run, near));
  return { along: near + dot(off, way), left: cross(way, off) };
};

/** Where a thing stands by the tape of its gate's run: what that reads there from either end, and how far off it. */
const offText = (left: number, away: string): string => {
  if (Math.abs(left) < 1 / 64) return phrase`in the line`;
  return left > 0 ? phrase`${away} left of the line` : phrase`${away} right of the line`;
};

const byTape = ({ run, site }: Beside, at: SitePoint) => {
  const { along, left: leftOf } = besideTrack(run, at);
  const hook = site.lines[run.line]?.hook ?? 'start';
  const left = leftOf * (hook === 'start' ? 1 : -1);
  const reads = roundLength(fromHook(run, inches(along), hook), site.lengths);
  const total = roundLength(run.length, site.lengths);
  const away = formatLength(inches(Math.abs(left)), fineStyle(site.lengths));
  return {
    reads: formatLength(reads, site.lengths),
    back: formatLength(inches(total - reads), site.lengths),
    off: offText(left, away),
  };
};

const sizes = (site: Site, { diameter, depth }: Post['hole']): string => {
  const write = (length: Inches): string => formatLength(length, shortStyle(site.lengths));
  return `${write(diameter)} × ${write(depth)}`;
};

const called: Readonly<Partial<Record<Post['kind'], string>>> = {
  roller: phrase`roller post`,
  'hold-open': phrase`post that holds a leaf open`,
  stop: phrase`stop between the leaves`,
};

const postRow = (beside: Beside, post: Post): string[] => {
  const { run, gate, layout, site } = beside;
  const { reads, back, off } = byTape(beside, post.at);
  const what = called[post.kind] ?? postWord(post);
  const write = (length: Inches): string => formatLength(length, shortStyle(site.lengths));
  return [
    runName(run, layout),
    gatePosts(gate, layout),
    post.tag,
    `${what}, ${gateTitle(gate, site)}, ${off}`,
    reads,
    back,
    '',
    pipeSize(post.od, site.lengths),
    sizes(site, post.hole),
    write(post.above),
    write(post.length),
  ];
};

const receiverRow = (beside: Beside): string[][] => {
  const { run, gate, layout, site } = beside;
  const told = site.gates[gate.id]?.receiver ?? null;
  if (gate.receiver === null || told === null) return [];
  const { reads, back, off } = byTape(beside, gate.receiver.at);
  const inside = pipeSize(told.inside, site.lengths);
  const what = phrase`receiver, ${gateTitle(gate, site)}, ${off}: ${receiverText(told)}, ${inside} inside`;
  const hole = sizes(site, gate.receiver.hole);
  const stretch = gatePosts(gate, layout);
  return [[runName(run, layout), stretch, '', what, reads, back, '', '', hole, '', '']];
};

/** What stands for a gate: the run that it is in, and the posts, in no order. */
export interface GateStands {
  readonly run: Run;
  readonly gate: GateLayout;
  readonly posts: readonly Post[];
}

/** The gates of a fence line, run by run, each with the posts that stand for it and are on no run. */
export const standsOf = ({ runs }: LineLayout, layout: Layout): GateStands[] => {
  const stands = [...layout.posts.values()].filter(standsByGate);
  return runs.flatMap((run) =>
    run.spaces.flatMap((space): GateStands[] => {
      const gate = space.kind === 'gate' ? layout.gates[space.gate] : undefined;
      if (gate === undefined) return [];
      return [{ run, gate, posts: stands.filter(({ gates }) => gates.includes(gate.id)) }];
    }),
  );
};

/**
 * What stands for the gates of a fence line, as rows of its hole table: roller posts, posts that
 * hold a leaf open, stops between two leaves, receivers. Each is found by what the tape of its run reads beside it and
 * how far it stands off to the left or right of one who walks from the hook.
 */
export const standRows = (line: LineLayout, layout: Layout, site: Site): string[][] =>
  standsOf(line, layout).flatMap(({ run, gate, posts }) => {
    const beside = { run, gate, layout, site };
    return [...posts.map((post) => postRow(beside, post)), ...receiverRow(beside)];
  });
