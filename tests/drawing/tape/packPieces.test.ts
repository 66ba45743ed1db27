import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packPieces } from '../../../src/drawing/tape/packPieces.ts';
import { lengthOf } from '../../../src/drawing/tape/tapePiece.ts';
import { anyLines } from '../anyYard.ts';
import { handYard } from '../handYard.ts';

describe('packPieces', () => {
  it('[D24] shows every space of every run once, in order', () => {
    fc.assert(
      fc.property(anyLines, fc.constantFrom(200, 500, 2000), (lines, capacity) => {
        for (const { runs } of Object.values(handYard(lines).layout.lines)) {
          const pieces = packPieces(runs, 'start', { capacity, fold: 20 }).flat();
          const shown = pieces.flatMap(({ run, first, last }) =>
            Array.from({ length: last - first }, (_, n) => `${run.id} ${first + n}`),
          );
          const all = runs.flatMap((run) => run.spaces.map((_, n) => `${run.id} ${n}`));
          expect(shown).toEqual(all);
        }
      }),
    );
  });

  it('[D24] no row is longer than fits, unless one space alone is', () => {
    fc.assert(
      fc.property(anyLines, fc.constantFrom(200, 500, 2000), (lines, capacity) => {
        for (const { runs } of Object.values(handYard(lines).layout.lines)) {
          for (const row of packPieces(runs, 'start', { capacity, fold: 20 })) {
            const length = row.reduce((so, piece) => so + lengthOf(piece), 0);
            const folds = 20 * (row.length - 1);
            const longest = Math.max(...row.flatMap(({ run }) => run.spaces.map((s) => s.length)));
            expect(length + folds).toBeLessThanOrEqual(capacity + longest + 1e-6);
          }
        }
      }),
    );
  });
});
