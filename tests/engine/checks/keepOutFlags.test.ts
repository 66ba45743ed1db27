import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

const straight = fence(bare, [
  [0, 0],
  [600, 0],
]);

const withGas = (site: Site, x: number, tolerance = 18): Site =>
  addFeature(
    site,
    {
      kind: 'utility',
      run: 'buried',
      label: 'Gas line',
      service: 'gas',
      width: inches(2),
      tolerance: inches(tolerance),
    },
    [
      { x, y: -200 },
      { x, y: 200 },
    ],
  );

const told = (site: Site) => layOutSite(site).flags.map(({ level, rule }) => `${level}: ${rule}`);

const stations = (site: Site): number[] =>
  Object.values(layOutSite(site).lines).flatMap(({ runs }) =>
    runs.flatMap(({ posts }) => posts.map(({ station }) => station)),
  );

describe('flags of keep-outs', () => {
  it('[P16] line posts step aside for a gas line, and nothing is flagged', () => {
    // closed to a hole of 8 in from 240 - 23 to 240 + 23
    const site = withGas(straight, 240);
    const along = stations(site);
    expect(along).toHaveLength(7);
    expect(along.every((at) => Math.abs(at - 240) >= 23 - 1e-9)).toBe(true);
    expect(told(site)).toEqual([]);
  });

  it('[F16] a gate post in the zone is a stop that says how far in and where to move the gate', () => {
    const site = withGas(gateOn(straight, 0, { from: 'start', offset: 200 }), 205);
    const { flags } = layOutSite(site);
    const [flag] = flags.filter(({ rule }) => rule === 'hole in a keep-out');
    expect(flag?.level).toBe('stop');
    expect(flag?.place).toEqual({ kind: 'gate', id: firstGate(site) });
    expect(flag?.message).toContain('into the tolerance zone of Gas line');
    const move = /move the gate (\S+) towards the end/.exec(flag?.message ?? '');
    expect(move).not.toBeNull();
    // done as told it is clear: hole of 18 in under a leaf of 44 in, zone of 19 in from 205
    const moved = moveGate(site, firstGate(site), { from: 'start', offset: inches(205 + 19 + 9) });
    expect(told(moved)).toEqual([]);
    expect(move?.[1]).toBe('2\'-9"');
  });

  it('[F16] a corner in the zone is a stop at its mark', () => {
    const site = withGas(
      fence(bare, [
        [0, 0],
        [300, 0],
        [300, 300],
      ]),
      310,
    );
    const [flag] = layOutSite(site).flags.filter(({ rule }) => rule === 'hole in a keep-out');
    expect(flag?.place.kind).toBe('mark');
    expect(flag?.message).toContain('move it or the line');
  });

  it('[F17] ground that no bay can cross is a stop that says how much is missing', () => {
    const site = withGas(straight, 300, 80);
    const [flag] = layOutSite(site).flags.filter(({ rule }) => rule === 'bay over its maximum');
    // 2 x (1 + 80 + 4) = 170 in closed to a hole of 8 in, against 120
    expect(flag?.level).toBe('stop');
    expect(flag?.message).toContain(`a bay of 14'-2", 4'-2" over the largest of 10'-0"`);
    expect(flag?.message).toContain('the tolerance zone of Gas line');
  });

  it('[F18] a hole that cuts an edge of paving is a caution', () => {
    const site = addFeature(straight, { kind: 'paving', label: 'Drive' }, [
      { x: -50, y: -50 },
      { x: 2, y: -50 },
      { x: 2, y: 50 },
      { x: -50, y: 50 },
    ]);
    expect(told(site)).toEqual(['caution: hole cuts paving']);
  });
});
