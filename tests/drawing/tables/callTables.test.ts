import { describe, expect, it } from 'vitest';
import { balanceTable, courseTable } from '../../../src/drawing/tables/callTables.ts';
import { pieceText } from '../../../src/drawing/tables/pieceText.ts';
import { callsOf, walked } from '../../engine/calls/read.ts';

const style = { system: 'decimal feet', fraction: 16 } as const;
const text = `due north 100 to a pin\ncurve right radius 50 delta 180°00'00" chord bearing due east\ndue south 100\ndue west 100.10\nsmudge\nN 5`;

describe('tables of calls', () => {
  it('have a row for each course, a curve with its measures', () => {
    const { rows, columns } = courseTable(callsOf(text).courses, { title: 'Courses', style });
    expect(rows.map((row) => row.length)).toEqual(rows.map(() => columns.length));
    expect(rows.slice(0, 2)).toEqual([
      ['1', 'due north', `100.00'`, '', 'pin'],
      ['2', 'due east', `100.00'`, `right, radius 50.00', 180°00'00", arc 157.08'`, ''],
    ]);
  });

  it('say how each course was balanced, and nothing of calls that are open', () => {
    const { rows } = balanceTable(walked(text), style);
    // 0.10 ft over four chords of 400.1 ft in all
    expect(rows.map((row) => row[4])).toEqual([`0.02'`, `0.02'`, `0.02'`, `0.03'`]);
    expect(balanceTable(walked('due north 100'), style).rows).toEqual([]);
  });

  it('a piece is told in one line', () => {
    expect(callsOf(text).pieces.map((piece) => pieceText(piece, style))).toEqual([
      `due north 100.00'`,
      `due east 100.00', curve to the right`,
      `due south 100.00'`,
      `due west 100.10'`,
      'not understood: no bearing and no distance: nothing in it to draw',
      expect.stringContaining('not understood, a side is missing: '),
    ]);
  });
});
