import { describe, expect, it } from 'vitest';
import { withFootMarks } from '../../src/cli/footMarks.ts';

describe('withFootMarks', () => {
  it('[K11] puts back the two foot marks that a shell took for quotes', () => {
    expect(withFootMarks(['--length', '54 --max 10', '--json'])).toEqual([
      '--length',
      "54'",
      '--max',
      "10'",
      '--json',
    ]);
  });

  it.each(['54', '54ft --max 10ft', '9 1/2 --max 10', '--max', 'a --b 1'])(
    '[K11] leaves %s alone',
    (word) => {
      expect(withFootMarks([word])).toEqual([word]);
    },
  );
});
