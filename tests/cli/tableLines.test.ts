import { describe, expect, it } from 'vitest';
import { tableLines } from '../../src/cli/tableLines.ts';

const heads = [
  { heading: 'Item', align: 'left', share: 1 },
  { heading: 'Count', align: 'right', share: 1 },
] as const;

describe('tableLines', () => {
  it('puts every cell under its heading, on the side of its column', () => {
    const rows = [
      ['Line post', '15'],
      ['Cap', '6'],
    ];
    expect(tableLines({ title: 'Load', columns: heads, rows })).toEqual([
      'Item       Count',
      'Line post     15',
      'Cap            6',
    ]);
  });

  it('gives no lines for a table without rows', () => {
    expect(tableLines({ title: 'Load', columns: heads, rows: [] })).toEqual([]);
  });
});
