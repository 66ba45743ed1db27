import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgesOf } from '../../src/editor/edges.ts';
import { edgeNear, markNear, onEdge } from '../../src/editor/ground.ts';
import { hits } from '../../src/editor/hit.ts';
import { legNear } from '../../src/editor/legNear.ts';
import { onLine } from '../../src/editor/snapLine.ts';
import { snapLines } from '../../src/editor/snapLines.ts';
import { standableMarks } from '../../src/editor/standableMarks.ts';
import { touchedEdge } from '../../src/editor/touchedEdge.ts';
import { untyped } from '../../src/editor/typed.ts';
import { layOutFrom } from '../../src/engine/layOutFrom.ts';
import { distance } from '../../src/geometry/distance.ts';
import { dot } from '../../src/geometry/dot.ts';
import type { SitePoint } from '../../src/geometry/point.ts';
import { subtract } from '../../src/geometry/subtract.ts';
import { nearestOnTrack } from '../../src/geometry/track.ts';
import { unitVector } from '../../src/geometry/unitVector.ts';
import { moveGate } from '../../src/site/edits/moveGate.ts';
import { moveMark } from '../../src/site/edits/moveMark.ts';
import type { MarkId } from '../../src/site/ids.ts';
import type { Path } from '../../src/site/path.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { gatedYard } from './gatedYard.ts';
import { scannedHits } from './scannedHits.ts';

const place = fc.record({
  x: fc.integer({ min: -800, max: 1100 }),
  y: fc.integer({ min: -1000, max: 800 }),
});
const places = fc.uniqueArray(place, {
  minLength: 9,
  maxLength: 9,
  selector: ({ x, y }) => `${x} ${y}`,
});

const gated = gatedYard({ from: 'start', offset: 60 });

const through = (name: string, marks: readonly MarkId[]): Path =>
  Object.fromEntries(marks.map((mark, n) => [`vertex:${name}${n}`, { mark, order: `a${n}` }]));

/** The yard with a gate, and more of everything that a hand can meet on marks anywhere. */
const crowded = (spots: readonly SitePoint[], bow: number): Site => {
  const mark = (n: number): MarkId => `mark:m${n}`;
  const own = spots.map(
    ({ x, y }, n) => [mark(n), { x, y, label: n === 8 ? 'M1' : '', fixed: false }] as const,
  );
  const fence = gated.lines['line:fence'];
  const tree = gated.features['feature:tree'];
  if (fence === undefined || tree?.kind !== 'tree') throw new Error('the yard has changed');
  const tape = { kind: 'tape', length: inches(300), trust: null, label: '' } as const;
  const off = { kind: 'offset', distance: inches(40), trust: null, label: '' } as const;
  const pin = { line: 'line:fence', leg: 'vertex:fence2' } as const;
  const at = (offset: number) => ({ from: 'start', offset: inches(offset) }) as const;
  return {
    ...gated,
    marks: { ...gated.marks, ...Object.fromEntries(own) },
    lines: {
      ...gated.lines,
      'line:more': {
        ...fence,
        path: through('l', [mark(0), mark(1), mark(2), mark(3)]),
        curved: bow === 0 ? {} : { 'vertex:l1': inches(bow) },
      },
    },
    features: {
      ...gated.features,
      'feature:slab': { kind: 'paving', label: '', path: through('s', [4, 5, 6].map(mark)) },
      'feature:oak': { ...tree, mark: mark(7) },
      'feature:note': { kind: 'note', label: '', mark: mark(6), text: 'gravel' },
    },
    shots: { 'shot:1': { x: 30, y: -40, z: inches(0), label: '' } },
    pins: {
      'pin:1': { ...pin, anchor: at(120), holds: { kind: 'clear', reach: inches(20) } },
      'pin:2': { ...pin, anchor: at(300), holds: { kind: 'post' } },
      'pin:3': { ...pin, anchor: at(122), holds: { kind: 'post' } },
    },
    observations: {
      'observation:1': { ...tape, from: mark(0), to: mark(4) },
      'observation:2': { ...tape, from: mark(0), to: mark(1) },
      'observation:3': { ...off, at: mark(8), from: mark(4), to: mark(5) },
    },
  };
};

const sites = fc
  .tuple(places, fc.constantFrom(0, 0, 24, -70, 400))
  .map(([spots, bow]) => crowded(spots, bow));
const reaches = fc.constantFrom(0, 0.5, 6, 20, 90, 700, 5000).map(inches);
const touches = fc.array(fc.record({ at: place, reach: reaches }), { minLength: 4, maxLength: 12 });

describe('what is near', () => {
  it('[E25] is met as by a scan of all, after an edit too', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(sites, touches, place, (site, all, to) => {
        const before = layOutFrom(site, null);
        const moved = moveMark(site, 'mark:m2', to);
        const after = layOutFrom(moved, before);
        const anchor = { from: 'end', offset: inches(Math.abs(to.x) % 300) } as const;
        const slid = moveGate(moved, 'gate:1', anchor);
        const last = layOutFrom(slid, after);
        for (const [each, { layout }] of [
          [site, before],
          [moved, after],
          [slid, last],
          [site, before],
        ] as const) {
          const own = [...layout.posts.values()].map(({ at }) => ({ at, reach: inches(9) }));
          for (const touch of [...all, ...own]) {
            const found = hits(each, layout, touch);
            expect(found).toEqual(scannedHits(each, layout, touch));
            for (const { kind } of found) seen.add(kind);
          }
        }
      }),
      { numRuns: 25 },
    );
    expect([...seen].toSorted()).toEqual(
      ['feature', 'gate', 'leg', 'mark', 'pin', 'post', 'shot', 'tape'].toSorted(),
    );
  });

  it('[E25] is the mark, leg or side that is nearest of all within reach', () => {
    fc.assert(
      fc.property(sites, touches, (site, all) => {
        const except: MarkId[] = ['mark:m1', 'mark:house1'];
        const marks = standableMarks(site).filter(({ id }) => !except.includes(id));
        const edges = edgesOf(site).filter((edge) => !edge.marks.some((id) => except.includes(id)));
        for (const { at, reach } of all) {
          const ground = { site, except };
          const [mark] = marks
            .map(({ id, point }) => ({ id, away: distance(at, point) }))
            .filter(({ away }) => away <= reach)
            .toSorted((a, b) => a.away - b.away);
          expect(markNear(ground, at, reach)?.id).toEqual(mark?.id);
          const [edge] = edges
            .map((one) => ({ one, away: onEdge(at, one).distance }))
            .filter(({ away }) => away <= reach)
            .toSorted((a, b) => a.away - b.away);
          expect(edgeNear(ground, at, reach)?.edge).toBe(edge?.one);
          const [touched] = edgesOf(site)
            .map((one) => ({ one, away: nearestOnTrack(at, one).off }))
            .filter(({ away }) => away <= reach)
            .toSorted((a, b) => a.away - b.away);
          expect(touchedEdge(site, { at, reach })).toBe(touched?.one ?? null);
        }
      }),
    );
  });

  it('[E25] is the leg that is nearest of all however far it is, and of one line', () => {
    const far = fc.record({
      x: fc.integer({ min: -90_000, max: 90_000 }),
      y: fc.integer({ min: -9000, max: 9000 }),
    });
    fc.assert(
      fc.property(sites, fc.oneof(place, far), (site, at) => {
        for (const only of [null, 'line:more', 'line:none'] as const) {
          const [first] = edgesOf(site)
            .flatMap((edge) => {
              if (edge.of.kind !== 'leg' || (only !== null && edge.of.line !== only)) return [];
              return [{ leg: edge.of.id, away: nearestOnTrack(at, edge).off }];
            })
            .toSorted((a, b) => a.away - b.away);
          const found = legNear(site, at, only);
          expect(found?.leg).toEqual(first?.leg);
          expect(found?.away).toEqual(first?.away);
        }
      }),
    );
  });

  it('[E25] are the ends within 50 ft of which the line on passes the hand', () => {
    fc.assert(
      fc.property(sites, touches, (site, all) => {
        for (const { at, reach } of all) {
          const aim = { at, reach, free: false, from: null, last: null, typed: untyped } as const;
          const lines = snapLines({ ...aim, except: [], also: [] }, { site, except: [] });
          // a curved leg goes on as it runs at its ends, which is told elsewhere
          const [bent, straight] = [true, false].map((is) =>
            edgesOf(site)
              .filter(({ bow }) => (bow !== 0) === is)
              .flatMap(({ start, end }) => [
                { origin: start, way: unitVector(end, start) ?? start },
                { origin: end, way: unitVector(start, end) ?? end },
              ]),
          );
          const isBent = (origin: SitePoint): boolean =>
            bent?.some((one) => one.origin === origin) === true;
          const expected = straight?.filter(({ origin, way }) => {
            const past = dot(subtract(at, origin), way);
            const line = { kind: 'extension', origin, way, label: '' } as const;
            return past > 0 && past <= 600 && distance(at, onLine(line, at)) <= reach;
          });
          expect(lines.filter(({ origin }) => !isBent(origin)).length).toBe(
            expected?.filter(({ origin }) => !isBent(origin)).length,
          );
          for (const line of lines) {
            expect(distance(at, onLine(line, at))).toBeLessThanOrEqual(reach);
          }
        }
      }),
    );
  });
});
