import { describe, expect, it } from 'vitest';
import { holeTable } from '../../../src/drawing/tables/holeTable.ts';
import { tapeReadings } from '../../../src/engine/posts/tapeReadings.ts';
import { toCsv } from '../../../src/exporters/csv/toCsv.ts';
import { formatLength } from '../../../src/units/formatLength.ts';
import { inches } from '../../../src/units/inches.ts';
import { handYard } from '../handYard.ts';
import { sampleYards } from '../sampleYards.ts';

const { site, layout } = handYard([
  {
    corners: [
      { x: 0, y: 0 },
      { x: 330, y: 0 },
    ],
    closed: false,
    maxBay: 120,
    gates: [{ leg: 0, from: 120, leaf: 44 }],
  },
]);
const line = layout.lines['line:1'];
const tableOf = (from: typeof site) => {
  if (line === undefined) throw new Error('expected the line of the hand-made yard');
  return holeTable(line, layout, from);
};

describe('holeTable', () => {
  it('[D16] [D132] reads from the hook and from the other end, post by post, with the hole and the pipe for each', () => {
    // 44 + 1 7/8 + 2 and a post of 2 3/8 make 50 1/4; 330 - 170 1/4 = 2 bays of 79 7/8
    expect(toCsv('Line', [tableOf(site)])).toBe(
      [
        'Line,Run,Stretch,Post,What,Tape reads,From the other end,From the last,Post OD,"Hole, dia × deep",Above ground,Post length',
        'Holes of Line 1,A–B,A–C,A,corner,"0""","27\'-6""",hook,"2.375""","10"" × 36""","72""","108"""',
        'Holes of Line 1,A–B,A–C,C,gate,"10\'-0""","17\'-6""","10\'-0""","2.375""","10"" × 36""","72""","108"""',
        'Holes of Line 1,A–B,C–D,D,"gate, hold 3\'-11 7/8""","14\'-2 1/4""","13\'-3 3/4""","gate 4\'-2 1/4""","2.375""","10"" × 36""","72""","108"""',
        'Holes of Line 1,A–B,D–B,1,line,"20\'-10 1/8""","6\'-7 7/8""","6\'-7 7/8""","1.900""","10"" × 36""","72""","108"""',
        'Holes of Line 1,A–B,D–B,B,corner,"27\'-6""","0""","6\'-7 7/8""","2.375""","10"" × 36""","72""","108"""',
        '',
      ].join('\r\n'),
    );
  });

  it('[D16] hooked at the other end, it counts from there and the bays stay the same', () => {
    const lines = { ...site.lines };
    const own = lines['line:1'];
    if (own === undefined) throw new Error('expected the line of the hand-made yard');
    const turned = tableOf({ ...site, lines: { 'line:1': { ...own, hook: 'end' } } });
    expect(turned.rows.map(([, , tag, , reads, , from]) => [tag, reads, from])).toEqual([
      ['B', '0"', 'hook'],
      ['1', '6\'-7 7/8"', '6\'-7 7/8"'],
      ['D', '13\'-3 3/4"', '6\'-7 7/8"'],
      ['C', '17\'-6"', 'gate 4\'-2 1/4"'],
      ['A', '27\'-6"', '10\'-0"'],
    ]);
  });

  it('[D16] a post that stands in from its mark is read from the mark', () => {
    const [run] = line?.runs ?? [];
    if (line === undefined || run === undefined) throw new Error('expected one run');
    const posts = run.posts.map((stop, n) =>
      n === 0 ? { ...stop, station: (stop.station + 3) as typeof stop.station } : stop,
    );
    const moved = holeTable({ ...line, runs: [{ ...run, posts }] }, layout, site);
    expect(
      moved.rows.slice(0, 2).map(([, , tag, says, reads, , from]) => [tag, says, reads, from]),
    ).toEqual([
      ['', 'hook at the mark', '0"', 'hook'],
      ['A', 'corner', '3"', '3"'],
    ]);
  });

  it('[D32] says how high every post stands, and to hold the opening at the second of a gate', () => {
    const { columns, rows } = tableOf(site);
    const at = columns.findIndex(({ heading }) => heading === 'Above ground');
    expect(rows.map((row) => row[at])).toEqual(Array(5).fill('72"'));
    expect(rows.filter((row) => row[3]?.includes('hold')).map((row) => row[2])).toEqual(['D']);
  });

  it('writes an outside diameter to the thousandth, or to the tenth of a millimetre', () => {
    const metric = tableOf({ ...site, lengths: { system: 'mm', fraction: 8 } });
    expect(metric.rows[3]?.slice(7, 9)).toEqual(['48.3 mm', '254 mm × 914 mm']);
  });

  it('[D132] names every stretch over its rows, and over the first of a tape where that is hooked', () => {
    const { groups } = tableOf(site);
    expect(groups).toEqual([
      'A–C, on the tape A–B: hooked at A, 27\'-6" in all',
      'A–C, on the tape A–B: hooked at A, 27\'-6" in all',
      'C–D, Gate 1',
      'D–B',
      'D–B',
    ]);
  });

  it('[D132] in every sample the two readings of a post add up to the tape, to the last mark', () => {
    for (const yard of sampleYards) {
      for (const own of Object.values(yard.layout.lines)) {
        for (const run of own.runs) {
          for (const hook of ['start', 'end'] as const) {
            const { posts, total } = tapeReadings(run, hook, yard.site.lengths);
            const sums = posts.map(({ reading, back }) =>
              formatLength(inches(reading + back), yard.site.lengths),
            );
            expect(new Set(sums)).toEqual(new Set([formatLength(total, yard.site.lengths)]));
          }
        }
      }
    }
  });

  it('[D133] says of a post that it is held by hand', () => {
    const [run] = line?.runs ?? [];
    const post = layout.posts.get('post:1');
    if (line === undefined || run === undefined || post === undefined) throw new Error('no run');
    const id = 'post:pin:1';
    const posts = run.posts.map((stop) => (stop.post === 'post:1' ? { ...stop, post: id } : stop));
    const pinned = new Map(
      [...layout.posts.values(), { ...post, id } as const].map((one) => [one.id, one]),
    );
    const held = { ...layout, posts: pinned };
    const own = { ...line, runs: [{ ...run, posts }] } as typeof line;
    const says = holeTable(own, held, site).rows.map((row) => row[3]);
    expect(says.filter((what) => what?.includes('held by hand'))).toEqual(['line, held by hand']);
    expect(tableOf(site).rows.some((row) => row[3]?.includes('held by hand'))).toBe(false);
  });
});
