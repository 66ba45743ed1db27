import { untoldGate, untoldLeaf } from '../../src/site/untold.ts';
import { oneWidth } from '../../src/site/oneWidth.ts';
import fc from 'fast-check';
import { openingOf } from '../../src/engine/gate/openingOf.ts';
import { termsOf } from '../../src/engine/gate/termsOf.ts';
import type { FenceLine } from '../../src/site/fenceLine.ts';
import type { Feature } from '../../src/site/feature.ts';
import type { Gate } from '../../src/site/gate.ts';
import { leafCounts, type GateWay } from '../../src/site/gateWay.ts';
import type { GateId, LineId, MarkId, VertexId } from '../../src/site/ids.ts';
import type { Path } from '../../src/site/path.ts';
import { freshOrders } from '../../src/site/pathOrder.ts';
import type { Pipe } from '../../src/site/pipe.ts';
import { roundPost } from '../../src/site/roundPost.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import type { Radians } from '../../src/units/radians.ts';
import { bare, spec } from './plainYard.ts';

/** A place on a coarse grid, so that marks meet, legs go straight on and corners are square. */
const place = fc.tuple(fc.integer({ min: -24, max: 24 }), fc.integer({ min: -24, max: 24 }));

/** A line of 2 to 12 marks; one that starts at a mark of the line before it makes a junction. */
const drawnLine = fc.record({
  places: fc.uniqueArray(place, { minLength: 2, maxLength: 12, selector: String }),
  closed: fc.boolean(),
  starts: fc.constantFrom('anew', 'anew', 'at a mark'),
  joins: fc.nat(20),
  halved: fc.option(fc.nat(10)),
});

const anchor = fc.record({
  from: fc.constantFrom('start' as const, 'end' as const, 'middle' as const),
  // sixteenths, so that a place is what a tape gives; corners and neighbours are often near
  offset: fc.oneof(
    fc.integer({ min: 0, max: 16 * 30 }).map((n) => inches(n / 16)),
    fc.integer({ min: 0, max: 16 * 400 }).map((n) => inches(n / 16)),
  ),
});

const pipe = (label: string, od: number): Pipe => ({ label, od: inches(od), wall: inches(0.2) });

const sleeve: Gate['receiver'] = {
  kind: 'driven pipe',
  ground: 'firm soil',
  depth: inches(16),
  inside: inches(1),
  rod: inches(0.625),
  lift: inches(6),
};

const turns = fc.constantFrom(Math.PI / 2, Math.PI, 1.2).map((angle) => angle as Radians);
const sixteenths = (low: number, high: number) =>
  fc.integer({ min: 16 * low, max: 16 * high }).map((n) => inches(n / 16));

/** Every way in which a gate closes its opening. */
const anyWay: fc.Arbitrary<GateWay> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('swing' as const), turns }) },
  fc.record({ kind: fc.constant('centre stop' as const), stop: sixteenths(2, 6), turns }),
  fc.record({
    kind: fc.constant('cantilever' as const),
    overlap: sixteenths(0, 8),
    counterbalance: sixteenths(0, 80),
    rollers: sixteenths(12, 80),
    behind: sixteenths(0, 12),
    stores: fc.constantFrom('start' as const, 'end' as const),
  }),
  fc.record({ kind: fc.constant('gap' as const), clear: sixteenths(20, 120) }),
);

const drawnGate = fc.record({
  line: fc.nat(20),
  leg: fc.nat(20),
  anchor,
  widths: fc.array(fc.integer({ min: 16 * 20, max: 16 * 90 }), { minLength: 1, maxLength: 2 }),
  hingedAt: fc.constantFrom('start' as const, 'end' as const),
  post: fc.constantFrom(null, null, roundPost(pipe('4', 4)), roundPost(pipe('6-5/8', 6.625))),
  opens: fc.constantFrom('left' as const, 'right' as const),
  way: anyWay,
  holdOpen: fc.boolean(),
  receiver: fc.constantFrom(null, sleeve),
  // how much wider than planned its posts were set, sixteenths; mostly not set yet
  set: fc.oneof(fc.constant(null), fc.constant(null), fc.integer({ min: -24, max: 24 })),
});

/** A building of which one wall passes through an end of a fence line, at some angle to the grid. */
const drawnHouse = fc.record({
  line: fc.nat(20),
  end: fc.constantFrom('first', 'last'),
  across: fc.constantFrom([0, 1], [1, 0], [1, 1], [1, 3], [-2, 1]),
});

type DrawnLine = typeof drawnLine extends fc.Arbitrary<infer T> ? T : never;
type DrawnGate = typeof drawnGate extends fc.Arbitrary<infer T> ? T : never;
type DrawnHouse = typeof drawnHouse extends fc.Arbitrary<infer T> ? T : never;

const pathOf = (prefix: string, marks: readonly MarkId[]): Path => {
  const orders = freshOrders(marks.length);
  return Object.fromEntries(
    marks.map((mark, n) => [`vertex:${prefix}-${n}`, { mark, order: orders[n] ?? '' }]),
  );
};

const marksOf = (line: FenceLine): MarkId[] => Object.values(line.path).map(({ mark }) => mark);

/** The places with one more in the middle of a leg, which the fence passes straight on. */
const halved = ({ places, halved: leg }: DrawnLine): (readonly [number, number])[] => {
  const [a, b] = leg === null ? [] : [places[leg], places[leg + 1]];
  if (leg === null || a === undefined || b === undefined) return places;
  return places.toSpliced(leg + 1, 0, [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]);
};

const withLine = (site: Site, drawn: DrawnLine, n: number): Site => {
  const before = Object.values(site.lines).flatMap(marksOf);
  const joined = drawn.starts === 'at a mark' ? before[drawn.joins % before.length] : undefined;
  const fresh = Object.fromEntries(
    halved(drawn).map(([x, y], k) => [
      `mark:${n}-${k}`,
      { x: x * 36, y: y * 36, label: '', fixed: false },
    ]),
  ) as Site['marks'];
  const own = Object.keys(fresh) as MarkId[];
  const path = pathOf(`${n}`, joined === undefined ? own : [joined, ...own.slice(1)]);
  const line: FenceLine = {
    label: '',
    spec: 'spec:six',
    closed: drawn.closed,
    hook: 'start',
    path,
    stepped: {},
    curved: {},
    walls: {},
    follows: null,
    guards: null,
  };
  return {
    ...site,
    marks: { ...site.marks, ...fresh },
    lines: { ...site.lines, [`line:${n}`]: line },
  };
};

/** The widths of as many leaves as a way has: none for a gap, two where it has no single leaf. */
const widthsFor = (way: GateWay, widths: readonly number[]): readonly number[] => {
  if (way.kind === 'gap') return [];
  const counts = leafCounts[way.kind];
  return counts.includes(widths.length) ? widths : [...widths, ...widths].slice(0, 2);
};

const latchFor = (leaves: number): Gate['latch'] => {
  if (leaves === 0) return null;
  return leaves === 1 ? 'hardware:fork' : 'hardware:rod';
};

const withGate = (site: Site, drawn: DrawnGate, n: number): Site => {
  const lines = Object.entries(site.lines) as [LineId, FenceLine][];
  const [id, line] = lines[drawn.line % lines.length] ?? [];
  if (id === undefined || line === undefined) return site;
  const vertices = Object.keys(line.path) as VertexId[];
  const legs = line.closed ? vertices : vertices.slice(0, -1);
  const { way } = drawn;
  const rolls = way.kind === 'cantilever';
  // mostly a leaf that reaches past its rollers; one that does not leaves nothing to close
  const tail = rolls ? way.overlap + (drawn.holdOpen ? way.counterbalance : 0) : 0;
  const widths = widthsFor(way, drawn.widths);
  const leaves = widths.map((width, k) => [
    `leaf:${n}-${k}`,
    {
      order: `a${k}`,
      ...untoldLeaf,
      widths: oneWidth(inches(width / 16 + tail)),
      from: 'measured' as const,
      hinge: rolls ? null : ('hardware:hinge' as const),
    },
  ]);
  const gate: Gate = {
    label: '',
    line: id,
    leg: legs[drawn.leg % legs.length] ?? 'vertex:none',
    anchor: drawn.anchor,
    leaves: Object.fromEntries(leaves) as Gate['leaves'],
    latch: latchFor(widths.length),
    ...untoldGate,
    way,
    opens: drawn.opens,
    hingedAt: drawn.hingedAt,
    holdOpen: drawn.holdOpen,
    receiver: drawn.receiver,
    post: drawn.post,
  };
  const asSet = asSetBy(site, gate, drawn.set);
  return { ...site, gates: { ...site.gates, [`gate:${n}` satisfies GateId]: { ...gate, asSet } } };
};

/** A gate whose posts were set so many sixteenths wider than planned, the top leaning in by 1/4. */
const asSetBy = (site: Site, gate: Gate, sixteenthsOff: number | null): Gate['asSet'] => {
  const bottom = openingOf(termsOf(gate, site)).target + (sixteenthsOff ?? 0) / 16;
  if (sixteenthsOff === null || bottom <= 1) return null;
  return {
    by: 'AB',
    on: '2026-11-25',
    top: inches(bottom - 1 / 4),
    bottom: inches(bottom),
    leans: { start: inches(1 / 4), end: null },
    leaves: {},
    hinges: {},
    remark: '',
  };
};

const withHouse = (site: Site, drawn: DrawnHouse, n: number): Site => {
  const lines = Object.values(site.lines);
  const line = lines[drawn.line % lines.length];
  const marks = line === undefined ? [] : marksOf(line);
  const at = site.marks[(drawn.end === 'first' ? marks[0] : marks.at(-1)) ?? 'mark:none'];
  const [across = 0, up = 0] = drawn.across;
  if (at === undefined) return site;
  const corner = (steps: number, off: number) => ({
    x: at.x + steps * across * 48 - off * up,
    y: at.y + steps * up * 48 + off * across,
    label: '',
    fixed: false,
  });
  const corners = { a: corner(-2, 0), b: corner(3, 0), c: corner(3, 5000), d: corner(-2, 5000) };
  const named = Object.entries(corners).map(([k, mark]) => [`mark:house-${n}-${k}`, mark] as const);
  const house: Feature = {
    kind: 'building',
    label: '',
    path: pathOf(
      `house-${n}`,
      named.map(([id]) => id as MarkId),
    ),
  };
  return {
    ...site,
    marks: { ...site.marks, ...Object.fromEntries(named) },
    features: { ...site.features, [`feature:house-${n}`]: house },
  };
};

/**
 * A buried service across the yard, off the grid on which fences are drawn: no stretch is closed
 * alike from both its ends, so that there is one best way of spacing it.
 */
const drawnService = fc.record({
  from: fc.tuple(fc.integer({ min: -60, max: 60 }), fc.integer({ min: -60, max: 60 })),
  to: fc.tuple(fc.integer({ min: -60, max: 60 }), fc.integer({ min: -60, max: 60 })),
  tolerance: sixteenths(2, 70),
});

type DrawnService = typeof drawnService extends fc.Arbitrary<infer T> ? T : never;

const withService = (site: Site, { from, to, tolerance }: DrawnService, n: number): Site => {
  const off = ([x, y]: readonly [number, number]) => ({
    x: x * 17.37,
    y: y * 16.91,
    label: '',
    fixed: false,
  });
  const ends: [MarkId, MarkId] = [`mark:gas-${n}-a`, `mark:gas-${n}-b`];
  const service: Feature = {
    kind: 'utility',
    run: 'buried',
    label: '',
    service: 'gas',
    width: inches(2),
    tolerance,
    path: pathOf(`gas-${n}`, ends),
  };
  return {
    ...site,
    marks: { ...site.marks, [ends[0]]: off(from), [ends[1]]: off(to) },
    features: { ...site.features, [`feature:gas-${n}`]: service },
  };
};

/** The fence that random sites are built to: a large corner angle makes bends, a small one corners. */
const specOf = (corner: number): Site['specs'] => ({
  'spec:six': { ...spec, cornerAngle: (corner * Math.PI) / 180 } as typeof spec,
});

/**
 * A site of one to three fence lines, with gates of which some do not fit, and houses that fences
 * end at, and services that they pass over. A person could have drawn it, if not on purpose.
 */
export const randomSite: fc.Arbitrary<Site> = fc
  .record({
    lines: fc.array(drawnLine, { minLength: 1, maxLength: 3 }),
    gates: fc.array(drawnGate, { maxLength: 5 }),
    houses: fc.array(drawnHouse, { maxLength: 2 }),
    services: fc.array(drawnService, { maxLength: 2 }),
    corner: fc.constantFrom(0, 15, 30, 120),
  })
  .map(({ lines, gates, houses, services, corner }) => {
    const drawn = lines.reduce(withLine, { ...bare, specs: specOf(corner) });
    const built = houses.reduce(withHouse, gates.reduce(withGate, drawn));
    return services.reduce(withService, built);
  });
