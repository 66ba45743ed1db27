import { describe, expect, it } from 'vitest';
import { buildWords } from '../../../src/drawing/proposal/buildWords.ts';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import { inches } from '../../../src/units/inches.ts';
import { spec } from '../../engine/plainYard.ts';

const boards = (gap: number, rails: number, board: string): Partial<FenceSpec> => ({
  infill: { kind: 'boards', board, rail: '', rails, width: inches(5.5), gap: inches(gap) },
});

describe('buildWords', () => {
  it.each([
    [{ topRail: null }, 'chain-link fence, 6 ft high'],
    [{}, 'chain-link fence, 6 ft high, with top rail'],
    [
      {
        middleRail: spec.topRail,
        bottomRail: spec.topRail,
        solid: 0.9,
        barbedWire: { strands: 3, arms: 'outward' },
      },
      'chain-link fence, 6 ft high, with top, middle and bottom rails, slats or a screen and 3 strands of barbed wire',
    ],
    [boards(0, 3, 'pine'), 'board fence (pine), 6 ft high, tight on 3 rails'],
    [boards(2, 1, ' '), 'board fence, 6 ft high, spaced on 1 rail'],
    [
      { infill: { kind: 'panels', panel: 'lattice', width: inches(96), last: 'cut' } },
      'panel fence (lattice), 6 ft high',
    ],
  ] as const)('[D102] %j', (change, words) => {
    expect(buildWords({ ...spec, ...(change as Partial<FenceSpec>) }, 'feet')).toBe(words);
  });
});
