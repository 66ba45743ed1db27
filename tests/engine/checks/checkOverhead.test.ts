import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import type { Feature } from '../../../src/site/feature.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../plainYard.ts';

const yard = fence(bare, [
  [0, 0],
  [1200, 0],
]);

type Service = Extract<Feature, { kind: 'utility' }>['service'];

const wires = (
  service: Service,
  [from, to]: readonly [readonly [number, number], readonly [number, number]],
  run: 'buried' | 'overhead' = 'overhead',
) =>
  layOutSite(
    addFeature(
      yard,
      { kind: 'utility', label: '', service, run, width: inches(24), tolerance: inches(18) },
      [from, to].map(([x, y]) => ({ x, y })),
    ),
  ).flags.filter(({ rule }) => /overhead|keep-out/.test(rule));

describe('fence near services overhead', () => {
  it('[F39] under an electric line it is a caution where it crosses, with how far to stay and grounding', () => {
    const flags = wires('electric', [
      [430, -600],
      [430, 600],
    ]);
    expect(flags.map(({ level, rule }) => [level, rule])).toEqual([['caution', 'line overhead']]);
    expect(flags[0]?.at.x).toBeCloseTo(430, 9);
    expect(flags[0]?.message).toMatch(
      /passes under the electric line overhead: .* 10'-0" away .*1926\.1408.*grounded 150'-0" from/,
    );
  });

  it('[F39] beside it a caution up to 10 ft from its edge, none farther off', () => {
    // half of its 24 in counts
    const beside = (y: number) =>
      wires('electric', [
        [0, y],
        [1200, y],
      ]);
    expect(beside(132)[0]?.message).toMatch(/is 10'-0" from the electric line/);
    expect(beside(133)).toEqual([]);
    expect(beside(132)[0]?.message).not.toContain('grounded');
  });

  it('[F39] other services overhead say to ask their owner, and none closes ground', () => {
    const flags = wires('communication', [
      [300, -600],
      [300, 600],
    ]);
    expect(flags).toHaveLength(1);
    expect(flags[0]?.message).toMatch(/communication line overhead: .* ask its owner/);
    // the same line buried closes the ground of its tolerance
    const closed = (run: 'buried' | 'overhead') =>
      wires(
        'communication',
        [
          [0, -600],
          [0, 600],
        ],
        run,
      ).map(({ rule }) => rule);
    expect(closed('buried')).toEqual(['hole in a keep-out']);
    expect(closed('overhead')).toEqual(['line overhead']);
  });
});
