import { describe, expect, it } from 'vitest';
import { rangeLines } from '../../src/cli/rangeLines.ts';
import { openingOf } from '../../src/engine/gate/openingOf.ts';
import { term } from '../engine/gate/term.ts';

describe('rangeLines', () => {
  it('[K12] names what each end is added up of, by kind of part', () => {
    const stop = openingOf([
      term('hinge', 1.5, 2),
      term('leaf', 44),
      term('latch', 1, 2, 3),
      term('stop', 4),
    ]);
    expect(rangeLines(stop, { system: 'inches', fraction: 16 })).toEqual(
      [
        'for sure        51"  to      52 1/2"  hinges 2" + leaves 44" + gap 1" + stop 4"; hinges 1 1/2" + leaves 44" + gap 3" + stop 4"',
        'possible     50 1/2"  to          53"  hinges 1 1/2" + leaves 44" + gap 1" + stop 4"; hinges 2" + leaves 44" + gap 3" + stop 4"',
        'statistical      51"  to      52 1/2"  root of the sum of squares of 1/4" about the middle; no promise for one gate',
      ].map((line) =>
        expect.stringMatching(new RegExp(line.replace(/[+./]/g, '\\$&').replace(/ {2,}/g, ' +'))),
      ),
    );
  });
});
