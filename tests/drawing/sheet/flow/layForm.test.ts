import { describe, expect, it } from 'vitest';
import { layForm } from '../../../../src/drawing/sheet/flow/layForm.ts';
import { paginate } from '../../../../src/drawing/sheet/flow/paginate.ts';
import { textsOf } from '../../textsOf.ts';

describe('layForm', () => {
  it('[D151] repeats the name of a group where it goes on in the next column', () => {
    const columns = ['Post', 'Set at'].map((heading) => ({ heading, hand: 1, share: 1 }));
    const rows = Array.from({ length: 12 }, (_, n) => [`${n}`, '']);
    const groups = rows.map((_, n) => (n < 2 ? 'Tape A–B' : 'Tape B–C'));
    const stack = layForm({ title: 'Posts', columns, rows, groups }, 6);
    const pages = paginate([stack], { x: 0, y: 0, width: 7, height: 3.5 });
    const names = pages.map(({ atoms }) =>
      textsOf(atoms)
        .map(({ text }) => text)
        .filter((text) => text.startsWith('Tape')),
    );
    expect(names).toEqual([['Tape A–B', 'Tape B–C'], ['Tape B–C, continued']]);
  });
});
