import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcLength } from '../../../src/geometry/onArc.ts';
import { bowed } from '../../../src/geometry/bowed.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { fromDxf } from '../../../src/importers/dxf/fromDxf.ts';
import type { FoundPath } from '../../../src/site/found.ts';
import { foundIn, pathsOf, pointsOf } from '../foundIn.ts';
import { block, dxfText, entity, line } from './dxfText.ts';

const usual = { chosen: null, usual: 'feet' } as const;
const read = (text: string) => foundIn(fromDxf(text, usual));

const curveLength = ({ points, bows, closed }: FoundPath): number =>
  points.slice(0, closed ? undefined : -1).reduce((sum, from, n) => {
    const to = points[(n + 1) % points.length] ?? from;
    const bow = bows[n] ?? 0;
    return sum + (bow === 0 ? distance(from, to) : arcLength(bowed(from, to, bow)));
  }, 0);

describe('what a DXF draws', () => {
  it('[I6] lines, points with height and texts by their layers, in the units it says', () => {
    const found = read(
      dxfText({
        units: 6,
        entities: [
          line('B', 0, 0, 2.54, 0),
          entity('POINT', 'A', [10, 25.4], [20, 50.8], [30, 0.254]),
          entity('TEXT', 'A', [10, 0], [20, 0], [40, 1], [1, '90%%d of {it} %%p1 %%C2 5%%% %%065']),
          entity('MTEXT', 'A', [10, 2.54], [20, 0], [40, 1], [1, '{\\fArial|b0;old} \\Pwell']),
        ],
      }),
    );
    expect(found.groups.map(({ key }) => key)).toEqual([
      'A › points',
      'A › heights',
      'A › texts',
      'B › lines',
    ]);
    expect(found.told).toEqual(['Read in metres, as the file says']);
    const [path] = pathsOf(found, 'B › lines');
    expect(path?.points[1]?.x).toBeCloseTo(100, 9);
    const [point] = pointsOf(found, 'A › heights');
    expect([point?.at.x, point?.at.y, point?.z].map((one) => Math.round((one ?? 0) * 1e6))).toEqual(
      [1000e6, 2000e6, 10e6],
    );
    expect(pointsOf(found, 'A › texts').map(({ name }) => name)).toEqual([
      '90° of it ±1 ⌀2 5% A',
      'old \nwell',
    ]);
  });

  it.each([
    [undefined, 12, 'The file names no unit: read in feet'],
    [1, 1, 'Read in inches, as the file says'],
    [2, 12, 'Read in feet, as the file says'],
    [4, 1 / 25.4, 'Read in millimetres, as the file says'],
    [5, 10 / 25.4, 'Read in centimetres, as the file says'],
    [6, 1000 / 25.4, 'Read in metres, as the file says'],
    [10, 36, 'Read in yards, as the file says'],
    // 1200 / 3937 m, 85 FR 62698
    [21, 12.000024, 'Read in US survey feet, as the file says'],
    [0, 12, 'The file names no unit: read in feet'],
    [
      19,
      12,
      'The file names a unit that is not read here ($INSUNITS 19): read in feet, choose another if that is wrong',
    ],
  ])('[I6] units of %s are %s in', (units, each, said) => {
    const found = read(
      dxfText({ ...(units === undefined ? {} : { units }), entities: [line('0', 0, 0, 1, 0)] }),
    );
    expect(pathsOf(found, '0 › lines')[0]?.points[1]?.x).toBeCloseTo(each, 8);
    expect(found.told).toEqual([said]);
  });

  it('[I6] a unit that a person chooses counts before what the file says', () => {
    const text = dxfText({ units: 6, entities: [line('0', 0, 0, 1, 0)] });
    const found = foundIn(fromDxf(text, { chosen: 'yards', usual: 'feet' }));
    expect(pathsOf(found, '0 › lines')[0]?.points[1]?.x).toBe(36);
    expect(found.told).toEqual(['Read in yards, as chosen']);
  });

  it('[I6] bulges, arcs and circles keep their curves: lengths are r times the angle', () => {
    const found = read(
      dxfText({
        units: 1,
        entities: [
          // half a circle to the right, then a straight side; tan(180° / 4) = 1
          entity(
            'LWPOLYLINE',
            'P',
            [90, 3],
            [70, 0],
            [10, 0],
            [20, 0],
            [42, 1],
            [10, 20],
            [20, 0],
            [10, 20],
            [20, 50],
          ),
          entity('ARC', 'A', [10, 0], [20, 0], [40, 100], [50, 350], [51, 80]),
          entity('CIRCLE', 'C', [10, 5], [20, 6], [40, 10]),
        ],
      }),
    );
    const [polyline] = pathsOf(found, 'P › lines');
    expect(polyline?.bows).toEqual([-10, 0, 0]);
    expect(curveLength(polyline as FoundPath)).toBeCloseTo(10 * Math.PI + 50, 9);
    const [arc] = pathsOf(found, 'A › lines');
    expect(curveLength(arc as FoundPath)).toBeCloseTo((100 * Math.PI) / 2, 9);
    expect(arc?.points[1]?.x).toBeCloseTo(100 * Math.cos((35 * Math.PI) / 180), 9);
    const [circle] = pathsOf(found, 'C › areas');
    expect(curveLength(circle as FoundPath)).toBeCloseTo(20 * Math.PI, 9);
  });

  it('[I6] the older polyline, and marks of a vertex that newer files write, are read alike', () => {
    const corner = (x: number, y: number) => entity('VERTEX', '0', [10, x], [20, y]);
    const found = read(
      dxfText({
        units: 1,
        entities: [
          entity('POLYLINE', 'old', [66, 1], [70, 1]) +
            corner(0, 0) +
            corner(9, 0) +
            corner(9, 9) +
            '0\nSEQEND\n',
          entity(
            'LWPOLYLINE',
            'new',
            [90, 3],
            [70, 1],
            [10, 0],
            [20, 0],
            [91, 0],
            [10, 9],
            [20, 0],
            [91, 0],
            [10, 9],
            [20, 9],
            [91, 0],
          ),
        ],
      }),
    );
    const [old, recent] = [pathsOf(found, 'old › areas'), pathsOf(found, 'new › areas')];
    expect(old[0]?.points).toEqual([
      { x: 0, y: 0 },
      { x: 9, y: 0 },
      { x: 9, y: 9 },
    ]);
    expect(recent[0]?.points).toEqual(old[0]?.points);
  });

  it('[I7] blocks are taken apart where they are inserted: moved, scaled, turned, mirrored, in rows', () => {
    const blocks = [
      block('GATE', [1, 1], line('0', 1, 1, 3, 1), line('WALL', 1, 1, 1, 2)),
      block('PAIR', [0, 0], entity('INSERT', 'X', [2, 'gate'], [10, 10], [20, 0])),
    ];
    const found = read(
      dxfText({
        units: 1,
        blocks,
        entities: [
          entity('INSERT', 'S', [2, 'GATE'], [10, 100], [20, 50], [41, 2], [42, 2], [50, 90]),
          entity('INSERT', 'N', [2, 'PAIR'], [10, 0], [20, 0], [41, -1], [42, 1]),
          entity(
            'INSERT',
            'R',
            [2, 'GATE'],
            [10, 0],
            [20, 0],
            [70, 2],
            [71, 3],
            [44, 100],
            [45, 200],
          ),
        ],
      }),
    );
    // worked by hand: base (1,1) to (100,50), twice as long, a quarter turn to the left
    const turned = pathsOf(found, 'S › lines')[0]?.points.map(({ x, y }) => [
      Math.round(x),
      Math.round(y),
    ]);
    expect(turned).toEqual([
      [100, 50],
      [100, 54],
    ]);
    // layer 0 of the inner block is on the layer of its own insert
    expect(pathsOf(found, 'X › lines')[0]?.points).toEqual([
      { x: -10, y: 0 },
      { x: -12, y: 0 },
    ]);
    expect(pathsOf(found, 'R › lines').map(({ points }) => points[0])).toEqual([
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 0, y: 200 },
      { x: 100, y: 200 },
      { x: 0, y: 400 },
      { x: 100, y: 400 },
    ]);
    expect(pathsOf(found, 'WALL › lines')).toHaveLength(8);
  });

  it('[I7] a circle in a block keeps its curve when it is turned or mirrored, and is flattened when it is squeezed', () => {
    const blocks = [
      block('B', [0, 0], entity('ARC', '0', [10, 0], [20, 0], [40, 10], [50, 0], [51, 90])),
    ];
    const insert = (layer: string, x: number, y: number) =>
      entity('INSERT', layer, [2, 'B'], [10, 0], [20, 0], [41, x], [42, y], [50, 30]);
    const found = read(
      dxfText({ units: 1, blocks, entities: [insert('M', -2, 2), insert('E', 1, 0.5)] }),
    );
    const [mirrored] = pathsOf(found, 'M › lines');
    expect(curveLength(mirrored as FoundPath)).toBeCloseTo(10 * Math.PI, 9);
    // mirrored, the arc goes round to the left
    expect(mirrored?.bows[0]).toBeGreaterThan(0);
    const [ellipse] = pathsOf(found, 'E › lines');
    expect(ellipse?.bows.every((bow) => bow === 0)).toBe(true);
    const at = (30 * Math.PI) / 180;
    for (const { x, y } of ellipse?.points ?? []) {
      const [along, across] = [
        x * Math.cos(at) + y * Math.sin(at),
        y * Math.cos(at) - x * Math.sin(at),
      ];
      expect(Math.hypot(along / 10, across / 5)).toBeCloseTo(1, 9);
    }
  });

  it('[I7] what is drawn on the back of the plane is mirrored, as its extrusion says', () => {
    const back = [
      [210, 0],
      [220, 0],
      [230, -1],
    ] as const;
    const found = read(
      dxfText({
        units: 1,
        entities: [
          entity('CIRCLE', 'C', [10, 5], [20, 6], [40, 1], ...back),
          entity(
            'LWPOLYLINE',
            'P',
            [90, 2],
            [70, 0],
            [10, 0],
            [20, 0],
            [42, 1],
            [10, 20],
            [20, 0],
            ...back,
          ),
          entity('CIRCLE', 'T', [10, 5], [20, 6], [40, 1], [210, 1], [220, 0], [230, 0]),
        ],
      }),
    );
    const [circle] = pathsOf(found, 'C › areas');
    expect(circle?.points.map(({ x }) => x)).toEqual([-6, -4]);
    expect(pathsOf(found, 'P › lines')[0]).toMatchObject({
      points: [{ x: 0 }, { x: -20 }],
      bows: [10, 0],
    });
    expect(found.refused).toEqual([
      { where: 'entity 3, CIRCLE on T', reason: 'is drawn on a slope: expected it in plan' },
    ]);
  });

  it('[I8] lines that meet end to end on a layer are one, closed where they come round', () => {
    const square = [
      line('A', 0, 0, 9, 0),
      line('A', 9, 9, 9, 0),
      line('A', 9, 9, 0, 9),
      line('A', 0, 9, 0, 0),
    ];
    const found = read(
      dxfText({
        units: 1,
        entities: [
          ...square,
          line('A', 0, 0, 9, 0),
          line('B', 9, 0, 20, 0),
          line('B', 20, 0, 30, 5),
        ],
      }),
    );
    expect(pathsOf(found, 'A › areas').map(({ points }) => points.length)).toEqual([4]);
    expect(pathsOf(found, 'A › lines')).toEqual([]);
    expect(pathsOf(found, 'B › lines').map(({ points }) => points.map(({ x }) => x))).toEqual([
      [9, 20, 30],
    ]);
    expect(found.told).toContain('7 lines, joined where they meet, are 2');
  });

  it('[I8] joining loses no length and keeps every arc, in whatever order and direction pieces are drawn', () => {
    const piece = fc.tuple(
      fc.integer({ min: 1, max: 500 }),
      fc.integer({ min: -300, max: 300 }),
      fc.integer({ min: -2, max: 2 }),
      fc.boolean(),
    );
    fc.assert(
      fc.property(
        fc.array(piece, { minLength: 2, maxLength: 30 }),
        fc.infiniteStream(fc.nat()),
        (pieces, keys) => {
          let at = { x: 0, y: 0 };
          let length = 0;
          const bows: number[] = [];
          const drawn = pieces.map(([dx, dy, bulge, back]) => {
            const to = { x: at.x + dx, y: at.y + dy };
            const [a, b] = back ? [to, at] : [at, to];
            const chord = distance(at, to);
            const half = 2 * Math.atan(Math.abs(bulge));
            length += bulge === 0 ? chord : (chord / (2 * Math.sin(half))) * 2 * half;
            at = to;
            bows.push((-bulge * chord) / 2);
            const turn = back ? -bulge : bulge;
            return {
              key: keys.next().value as number,
              text: entity(
                'LWPOLYLINE',
                'A',
                [90, 2],
                [70, 0],
                [10, a.x],
                [20, a.y],
                [42, turn],
                [10, b.x],
                [20, b.y],
              ),
            };
          });
          const shuffled = drawn.toSorted((a, b) => a.key - b.key).map(({ text }) => text);
          const paths = pathsOf(read(dxfText({ units: 1, entities: shuffled })), 'A › lines');
          // pieces always go east, so no more than two ends meet anywhere
          expect(paths).toHaveLength(1);
          expect(paths[0]?.points).toHaveLength(pieces.length + 1);
          expect(curveLength(paths[0] as FoundPath) / length).toBeCloseTo(1, 9);
          const [first, last] = [paths[0]?.points[0], paths[0]?.points.at(-1)];
          const east = (first?.x ?? NaN) < (last?.x ?? NaN);
          // run the other way every arc is on its other side
          const due = east ? bows : bows.toReversed().map((bow) => -bow);
          due.forEach((bow, n) => expect(paths[0]?.bows[n]).toBeCloseTo(bow, 6));
        },
      ),
    );
  });

  it('[I9] coordinates of a state plane are moved by a round number, which is told; what lies far off is refused', () => {
    const found = read(
      dxfText({
        units: 2,
        entities: [
          line('A', 2_700_123.5, 215_400.25, 2_700_223.5, 215_400.25),
          line('A', 2_700_500, 215_500, 2_700_600, 215_500),
          line('A', 0, 0, 1, 1),
        ],
      }),
    );
    expect(found.told).toContain(
      'Moved: 0, 0 is here 2,700,000 east, 215,000 north in the file, in feet',
    );
    expect(pathsOf(found, 'A › lines')[0]?.points[0]).toEqual({ x: 123.5 * 12, y: 400.25 * 12 });
    expect(found.refused).toEqual([
      { where: 'entity 3, LINE on A', reason: 'lies over 10 miles from the others' },
    ]);
    const near = read(dxfText({ units: 2, entities: [line('A', 5000, 5000, 5100, 5000)] }));
    expect(pathsOf(near, 'A › lines')[0]?.points[0]).toEqual({ x: 60_000, y: 60_000 });
  });
});
