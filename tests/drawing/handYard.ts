import { unsurveyed } from '../../src/engine/survey/survey.ts';
import { heldBetween } from '../engine/heldBetween.ts';
import { untoldGate, untoldLeaf } from '../../src/site/untold.ts';
import { oneWidth } from '../../src/site/oneWidth.ts';
import type { Flag } from '../../src/engine/flag.ts';
import type { GateLayout, Layout, Leg, LineLayout, Run, Space } from '../../src/engine/layout.ts';
import type { Opening } from '../../src/engine/opening.ts';
import type { Post, PostId } from '../../src/engine/post.ts';
import { bearing } from '../../src/geometry/bearing.ts';
import { distance } from '../../src/geometry/distance.ts';
import { moved } from '../../src/geometry/moved.ts';
import type { SitePoint } from '../../src/geometry/point.ts';
import { emptySite } from '../../src/site/emptySite.ts';
import type { FenceLine } from '../../src/site/fenceLine.ts';
import type { GateId, LineId, VertexId } from '../../src/site/ids.ts';
import { freshOrders } from '../../src/site/pathOrder.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { radians } from '../../src/units/radians.ts';

/** A fence line laid out by hand: its corners, its longest bay, and gates by leg and first post. */
export interface HandLine {
  readonly corners: readonly SitePoint[];
  readonly closed: boolean;
  readonly maxBay: number;
  readonly gates: readonly { readonly leg: number; readonly from: number; readonly leaf: number }[];
}

const od = 2.375;

const opening = (leaf: number): Opening => {
  const term = (role: 'leaf' | 'hinge' | 'latch', label: string, size: number, give = 0) => ({
    role,
    label,
    low: inches(size - give),
    planned: inches(size),
    high: inches(size + give),
    of: null,
    on: '',
    source: 'measured',
    spread: role === 'latch' ? ('catch' as const) : ('uncertain' as const),
  });
  const terms = [
    term('leaf', 'Leaf', leaf),
    term('hinge', 'Hinge', 1.875),
    term('latch', 'Latch', 2, 0.5),
  ];
  const target = inches(leaf + 3.875);
  return { ...heldBetween(target - 0.5, target + 0.5, target), terms };
};

const postAt = (tag: string, at: SitePoint, kind: Post['kind'], line: LineId): Post => ({
  id: `post:${tag}`,
  tag,
  kind,
  at,
  along: radians(0),
  section: 'round',
  od: inches(kind === 'line' ? 1.9 : od),
  pipe: kind === 'line' ? '2' : '2-1/2',
  lines: [line],
  gates: [],
  above: inches(72),
  hole: { diameter: inches(10), depth: inches(36), source: 'from memory' },
  wall: null,
  length: inches(108),
});

/** Lays hand-drawn lines out in the plainest way, without the engine, for tests of the drawing. */
export const handYard = (
  lines: readonly HandLine[],
  flags: readonly Flag[] = [],
): { readonly site: Site; readonly layout: Layout } => {
  const posts = new Map<PostId, Post>();
  const gates: Record<GateId, GateLayout> = {};
  const layouts: Record<LineId, LineLayout> = {};
  const siteLines: Record<LineId, FenceLine> = {};
  const siteGates: Record<string, Site['gates'][GateId]> = {};
  let letters = 0;
  let numbers = 0;
  const add = (post: Post): PostId => {
    posts.set(post.id, post);
    return post.id;
  };
  const letter = (): string => {
    const n = letters++;
    return String.fromCharCode(65 + (n % 26)) + (n < 26 ? '' : String(Math.floor(n / 26)));
  };
  lines.forEach(({ corners, closed, maxBay, gates: wanted }, l) => {
    const id: LineId = `line:${l + 1}`;
    const around = closed ? [...corners, ...corners.slice(0, 1)] : [...corners];
    const terminals = corners.map((at) => add(postAt(letter(), at, 'corner', id)));
    const legs: Leg[] = [];
    const runs: Run[] = [];
    let from = 0;
    around.slice(1).forEach((end, n) => {
      const start = around[n] ?? end;
      const length = inches(distance(start, end));
      const way = bearing(start, end);
      const leg: VertexId = `vertex:${l}-${n}`;
      legs.push({ id: leg, start, end, bow: 0, length, bearing: way, from: inches(from) });
      from += length;
      const stops: { post: PostId; station: number; gate: GateId | null }[] = [];
      const first = terminals[n] ?? 'post:none';
      stops.push({ post: first, station: 0, gate: null });
      const bays = (to: number): void => {
        const begin = stops.at(-1)?.station ?? 0;
        const count = Math.max(1, Math.ceil((to - begin) / maxBay));
        for (let bay = 1; bay < count; bay++) {
          const station = begin + ((to - begin) * bay) / count;
          const post = add(postAt(String(++numbers), moved(start, way, station), 'line', id));
          stops.push({ post, station, gate: null });
        }
      };
      wanted.forEach((gate, g) => {
        if (gate.leg !== n) return;
        const gateId: GateId = `gate:${l}-${g}`;
        const hold = opening(gate.leaf);
        const apart = hold.target + od;
        if (gate.from + apart + 24 > length) return;
        bays(gate.from);
        const a = add(postAt(letter(), moved(start, way, gate.from), 'gate', id));
        const b = add(postAt(letter(), moved(start, way, gate.from + apart), 'gate', id));
        stops.push({ post: a, station: gate.from, gate: null });
        stops.push({ post: b, station: gate.from + apart, gate: gateId });
        const hinge = moved(start, way, gate.from + od / 2 + 1.875);
        gates[gateId] = {
          id: gateId,
          line: id,
          placed: true,
          opening: hold,
          stands: hold.target,
          posts: { start: a, end: b },
          start: moved(start, way, gate.from),
          end: moved(start, way, gate.from + apart),
          middle: moved(start, way, gate.from + apart / 2),
          bearing: way,
          leaves: [
            {
              id: 'leaf:1',
              width: inches(gate.leaf),
              hinge,
              pin: 'assumed',
              hung: inches(0),
              thickness: inches(1.66),
              closed: way,
              turns: radians(Math.PI / 2),
              open: radians(way + Math.PI / 2),
            },
          ],
          slides: [],
          stop: null,
          receiver: null,
        };
        siteGates[gateId] = {
          label: `Gate ${g + 1}`,
          line: id,
          leg,
          anchor: { from: 'start', offset: inches(gate.from) },
          leaves: {
            'leaf:1': {
              order: 'a0',
              ...untoldLeaf,
              widths: oneWidth(inches(gate.leaf)),
              from: 'measured',
              hinge: 'hardware:hinge',
            },
          },
          latch: 'hardware:latch',
          opens: 'left',
          hingedAt: 'start',
          ...untoldGate,
        };
      });
      bays(length);
      const last = terminals[(n + 1) % corners.length] ?? 'post:none';
      stops.push({ post: last, station: length, gate: null });
      let stretch = 0;
      const spaces = stops.slice(1).map((stop, s): Space => {
        const apart = inches(stop.station - (stops[s]?.station ?? 0));
        if (stop.gate === null) return { kind: 'bay', length: apart, stretch };
        stretch += 1;
        return { kind: 'gate', length: apart, gate: stop.gate };
      });
      runs.push({
        id: `run:${l}-${n}`,
        line: id,
        legs: [leg],
        start,
        end,
        length,
        bearing: way,
        posts: stops.map(({ post, station }) => ({ post, station: inches(station) })),
        spaces,
        bow: 0,
        wall: null,
        ground: null,
      });
    });
    layouts[id] = { id, legs, runs, length: inches(from) };
    siteLines[id] = {
      label: `Line ${l + 1}`,
      spec: 'spec:1',
      closed,
      hook: 'start',
      path: {},
      stepped: {},
      curved: {},
      walls: {},
      follows: null,
      guards: null,
    };
  });
  const site: Site = {
    ...emptySite({ specs: {}, hardware: {} }),
    lines: siteLines,
    gates: siteGates,
  };
  return {
    site,
    layout: { lines: layouts, posts, gates, ground: null, survey: unsurveyed, flags },
  };
};

/** A path of new marks through points, for the features of a hand-made site. */
export const handPath = (points: readonly SitePoint[], prefix: string) => {
  const orders = freshOrders(points.length);
  return {
    marks: Object.fromEntries(
      points.map(
        ({ x, y }, n) => [`mark:${prefix}-${n}`, { x, y, label: '', fixed: false }] as const,
      ),
    ),
    path: Object.fromEntries(
      points.map(
        (_, n) =>
          [
            `vertex:${prefix}-${n}`,
            { mark: `mark:${prefix}-${n}` as const, order: orders[n] ?? '' },
          ] as const,
      ),
    ),
  };
};
