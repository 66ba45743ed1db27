import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromDxf } from '../../../src/importers/dxf/fromDxf.ts';
import { usualBecomes } from '../../../src/importers/usualBecomes.ts';
import { foundIn, pathsOf, reasonOf } from '../foundIn.ts';
import { block, dxfText, entity, line } from './dxfText.ts';

const usual = { chosen: null, usual: 'feet' } as const;
const read = (text: string) => foundIn(fromDxf(text, usual));

describe('a DXF at fault', () => {
  it('[I10] what cannot be brought is counted and told, the rest is brought', () => {
    const found = read(
      dxfText({
        units: 1,
        entities: [
          entity('HATCH', 'H', [10, 0]),
          entity('SPLINE', 'H', [70, 8]),
          entity('WIPEOUT', 'H'),
          line('A', 0, 0, 5, 0),
          line('A', 7, 7, 7, 7),
          entity('LINE', 'A', [10, 'abc'], [20, 0], [11, 1], [21, 1]),
          entity('INSERT', 'A', [2, 'GONE'], [10, 0], [20, 0]),
          entity('LINE', 'P', [67, 1], [10, 0], [20, 0], [11, 1], [21, 1]),
          entity('POLYLINE', 'M', [66, 1], [70, 16], [71, 1], [72, 2]),
          entity('VERTEX', 'M', [10, 0], [20, 0]),
          entity('VERTEX', 'M', [10, 9], [20, 0]),
          entity('SEQEND', 'M'),
        ],
      }),
    );
    expect(found.told.slice(1)).toEqual([
      'Cannot be brought and is left out: 1 HATCH, 1 SPLINE, 1 WIPEOUT',
      'Left out, since it lies on a page and not on the ground: 1',
    ]);
    expect(found.refused).toEqual([
      { where: 'entity 5, LINE on A', reason: 'expected numbers for its coordinates' },
      { where: 'entity 6, INSERT on A', reason: 'its block “GONE” is not in the file' },
      { where: 'entity 8, POLYLINE on M', reason: 'is a mesh of faces: expected lines' },
      { where: 'entity 4, LINE on A', reason: 'expected a line of some length, found one spot' },
    ]);
    expect(pathsOf(found, 'A › lines')).toHaveLength(1);
  });

  it.each([
    ['hello', 'line 1: expected a DXF saved as text, found “hello”'],
    [
      '0\nSECTION\n2\nENTITIES\n0\nLINE\n8\n',
      'ends too early: expected EOF at its end, so part of it is missing',
    ],
    [
      '0\nSECTION\n2\nENTITIES\n0\nLINE\nlayer\n0\n0\nENDSEC\n0\nEOF\n',
      'line 7: expected a group code, found “layer”',
    ],
    ['0\nSECTION\n2\nENTITIES\n0\nEOF\n', 'ends too early: expected the end of “ENTITIES”'],
    [dxfText({ entities: [] }), 'expected lines, arcs, points or texts, found none'],
    [
      dxfText({
        entities: [
          entity('HATCH', '0'),
          entity('SPLINE', '0'),
          entity('SPLINE', 'A'),
          entity('LINE', 'P', [67, 1], [10, 0], [20, 0], [11, 1], [21, 1]),
        ],
      }),
      'expected lines, arcs, points or texts, found only 1 HATCH, 2 SPLINE, 1 on a page and not on the ground',
    ],
    [
      dxfText({ entities: [entity('LINE', '0', [10, '0,5'], [20, 0], [11, 1], [21, 1])] }),
      'line 10: expected a number with a decimal point, found “0,5”',
    ],
  ])('[I10] %j is refused in one line', (text, reason) => {
    expect(reasonOf(fromDxf(text, usual))).toBe(reason);
  });

  it('[I24] heights of lines are not brought, which is told', () => {
    const flat = entity('LWPOLYLINE', 'A', [38, 0], [10, 0], [20, 0], [10, 9], [20, 0]);
    const contour = entity('LWPOLYLINE', 'A', [38, 100], [10, 0], [20, 5], [10, 9], [20, 5]);
    const slope = entity('LINE', 'A', [10, 0], [20, 9], [30, 0], [11, 9], [21, 9], [31, -2]);
    const point = entity('POINT', 'A', [10, 0], [20, 0], [30, 5]);
    const older = [
      entity('POLYLINE', 'A', [66, 1]),
      entity('VERTEX', 'A', [10, 0], [20, 20], [30, 7]),
      entity('VERTEX', 'A', [10, 9], [20, 20], [30, 8]),
      entity('SEQEND', 'A'),
    ].join('');
    const lost = (...entities: readonly string[]) => read(dxfText({ entities })).told.slice(1);
    expect(lost(flat, point)).toEqual([]);
    expect(lost(flat, contour, slope, older, point)).toEqual([
      'Lines lie flat on a yard: the heights of 3 are left out',
    ]);
  });

  it('[I23] layers that are off or frozen are left out unless a person chooses them', () => {
    const layers = [
      ['Fence', 0, 7],
      ['BOUNDARY', 4, 7],
      ['GAS', 1, 7],
      ['POOL', 0, -7],
    ] as const;
    const entities = layers.map(([name], n) => line(name.toUpperCase(), 0, n, 9, n));
    const found = read(dxfText({ layers, entities }));
    expect(found.groups.map((group) => [group.layer, usualBecomes(group)])).toEqual([
      ['BOUNDARY', 'boundary'],
      ['FENCE', 'fence line'],
      ['GAS', 'leave out'],
      ['POOL', 'leave out'],
    ]);
    expect(found.told.at(-1)).toBe(
      'Off or frozen in the file, so left out unless chosen: GAS, POOL',
    );
    const shown = read(dxfText({ entities }));
    expect(shown.groups.map(usualBecomes)).toContain('utility, gas');
  });

  it('[I10] blocks that hold each other, and rows without end, are refused and not drawn for ever', () => {
    const insert = (name: string, ...more: readonly (readonly [number, number])[]) =>
      entity('INSERT', '0', [2, name], [10, 0], [20, 0], ...more);
    const ring = [block('A', [0, 0], line('0', 0, 0, 1, 0), insert('A'))];
    const ringed = read(dxfText({ units: 1, blocks: ring, entities: [insert('A')] }));
    expect(ringed.refused).toEqual([
      { where: 'entity 1, INSERT on 0', reason: 'its blocks lie too deep in one another' },
    ]);
    const bomb = ['A', 'B', 'C', 'D', 'E', 'F', 'G'].map((name, n, all) =>
      block(
        name,
        [0, 0],
        ...Array.from({ length: 10 }, () =>
          n === 6 ? line('0', 0, 0, 1, 0) : insert(all[n + 1] ?? ''),
        ),
      ),
    );
    const most = 'its blocks come to more than 50,000 things';
    expect(reasonOf(fromDxf(dxfText({ blocks: bomb, entities: [insert('A')] }), usual))).toBe(most);
    const rows = dxfText({
      blocks: [block('A', [0, 0])],
      entities: [insert('A', [70, 32_000], [71, 32_000])],
    });
    expect(reasonOf(fromDxf(rows, usual))).toBe(most);
  });

  it('[I11] any cut and any wrong line gives a result or one line, and never throws', () => {
    const whole = dxfText({
      units: 1,
      blocks: [block('B', [0, 0], line('0', 0, 0, 1, 1))],
      entities: [
        line('A', 0, 0, 5, 0),
        entity('LWPOLYLINE', 'A', [90, 2], [70, 1], [10, 0], [20, 0], [42, 1], [10, 20], [20, 0]),
        entity('INSERT', 'A', [2, 'B'], [10, 0], [20, 0], [50, 45]),
        entity('TEXT', 'A', [10, 0], [20, 0], [40, 1], [1, 'old well']),
      ],
    });
    const lines = whole.split('\n');
    fc.assert(
      fc.property(fc.nat(whole.length), (at) => {
        expect(reasonOf(fromDxf(whole.slice(0, at), usual))).not.toMatch(/\n/);
      }),
    );
    fc.assert(
      fc.property(
        fc.nat(lines.length - 1),
        fc.oneof(
          fc.string(),
          fc.constantFrom(
            '0',
            '10',
            '42',
            'EOF',
            'VERTEX',
            'BLOCK',
            'ENDBLK',
            '__proto__',
            '1e999',
          ),
        ),
        (n, text) => {
          expect(reasonOf(fromDxf(lines.with(n, text).join('\n'), usual))).not.toMatch(/\n/);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('[I12] 50,000 lines on 20 layers are read within ten seconds', () => {
    const entities = Array.from({ length: 50_000 }, (_, n) => {
      const [x, y] = [2_100_000 + (n % 250) * 10, 700_000 + Math.floor(n / 250) * 10];
      return line(`L${n % 20}`, x, y, x + 5, y + 3);
    });
    const text = dxfText({ units: 2, entities });
    const start = performance.now();
    const found = read(text);
    // ours, no published source: what a person waits for; about a tenth of it on two cores
    expect(performance.now() - start).toBeLessThan(10_000);
    expect(found.groups).toHaveLength(20);
    expect(pathsOf(found, 'L7 › lines')).toHaveLength(2500);
    expect(found.groups[2]?.layer).toBe('L2');
  });
});
