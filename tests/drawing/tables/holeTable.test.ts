import { describe, expect, it } from 'vitest';
import { holeTable } from '../../../src/drawing/tables/holeTable.ts';
import { toCsv } from '../../../src/exporters/csv/toCsv.ts';
import { handYard } from '../handYard.ts';

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
  it('[D16] reads from the hook, post by post, with the hole and the pipe for each', () => {
    // 44 + 1 7/8 + 2 and a post of 2 3/8 make 50 1/4; 330 - 170 1/4 = 2 bays of 79 7/8
    expect(toCsv('Line', [tableOf(site)])).toBe(
      [
        'Line,Run,Post,What,Tape reads,From the last,Post OD,"Hole, dia × deep",Above ground,Post length',
        'Holes of Line 1,A–B,A,corner,"0""",hook,"2.375""","10"" × 36""","72""","108"""',
        'Holes of Line 1,A–B,C,gate,"10\'-0""","10\'-0""","2.375""","10"" × 36""","72""","108"""',
        'Holes of Line 1,A–B,D,"gate, hold 3\'-11 7/8""","14\'-2 1/4""","gate 4\'-2 1/4""","2.375""","10"" × 36""","72""","108"""',
        'Holes of Line 1,A–B,1,line,"20\'-10 1/8""","6\'-7 7/8""","1.900""","10"" × 36""","72""","108"""',
        'Holes of Line 1,A–B,B,corner,"27\'-6""","6\'-7 7/8""","2.375""","10"" × 36""","72""","108"""',
        '',
      ].join('\r\n'),
    );
  });

  it('[D16] hooked at the other end, it counts from there and the bays stay the same', () => {
    const lines = { ...site.lines };
    const own = lines['line:1'];
    if (own === undefined) throw new Error('expected the line of the hand-made yard');
    const turned = tableOf({ ...site, lines: { 'line:1': { ...own, hook: 'end' } } });
    expect(turned.rows.map(([, tag, , reads, from]) => [tag, reads, from])).toEqual([
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
      moved.rows.slice(0, 2).map(([, tag, says, reads, from]) => [tag, says, reads, from]),
    ).toEqual([
      ['', 'hook at the mark', '0"', 'hook'],
      ['A', 'corner', '3"', '3"'],
    ]);
  });

  it('[D32] says how high every post stands, and to hold the opening at the second of a gate', () => {
    const { columns, rows } = tableOf(site);
    const at = columns.findIndex(({ heading }) => heading === 'Above ground');
    expect(rows.map((row) => row[at])).toEqual(Array(5).fill('72"'));
    expect(rows.filter((row) => row[2]?.includes('hold')).map((row) => row[1])).toEqual(['D']);
  });

  it('writes an outside diameter to the thousandth, or to the tenth of a millimetre', () => {
    const metric = tableOf({ ...site, lengths: { system: 'mm', fraction: 8 } });
    expect(metric.rows[3]?.slice(5, 7)).toEqual(['48.3 mm', '254 mm × 914 mm']);
  });
});
