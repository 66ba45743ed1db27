import { describe, expect, it } from 'vitest';
import { swingTexts } from '../../../src/drawing/tables/swingTexts.ts';
import type { GateLayout } from '../../../src/engine/layout.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { cross } from '../../../src/geometry/cross.ts';
import { moved } from '../../../src/geometry/moved.ts';
import { subtract } from '../../../src/geometry/subtract.ts';
import { sampleYards } from '../sampleYards.ts';

const yardOf = (name: string) => {
  const yard = sampleYards.find((one) => one.name === name);
  if (yard === undefined) throw new Error(`expected a sample yard ${name}`);
  return yard;
};
const { site, layout } = yardOf('back-yard');

describe('swingTexts', () => {
  it('[D30] a single gate names the post with its hinges, a double gate both', () => {
    const texts = Object.values(layout.gates).map((gate) => swingTexts(gate, layout));
    expect(texts).toContainEqual({ hingedAt: 'B', opens: 'to the left, looking from B to C' });
    expect(texts).toContainEqual({
      hingedAt: 'H and I',
      opens: 'to the right, looking from H to I',
    });
  });

  it.each(sampleYards)('[D30] in $name the open leaf stands on the side that is said', (yard) => {
    const said = Object.values<GateLayout>(yard.layout.gates).map((gate) => {
      const swing = swingTexts(gate, yard.layout);
      const [, side, from, to] =
        /to the (\w+), looking from (\w+) to (\w+)/.exec(swing?.opens ?? '') ?? [];
      const at = (tag: string | undefined) =>
        [...yard.layout.posts.values()].find((post) => post.tag === tag)?.at ?? { x: 0, y: 0 };
      const along = subtract(at(to), at(from));
      return gate.leaves.map(({ hinge, open, width }) => {
        const tip = subtract(moved(hinge, open, width), at(from));
        return { side, stands: cross(along, tip) > 0 ? 'left' : 'right' };
      });
    });
    expect(said.flat().length).toBeGreaterThan(0);
    for (const { side, stands } of said.flat()) expect(stands).toBe(side);
  });

  it('[D30] hinged at the other post, it is the same ground seen from there', () => {
    const gates = Object.fromEntries(
      Object.entries(site.gates).map(([id, gate]) => [id, { ...gate, hingedAt: 'end' as const }]),
    );
    const turned = layOutSite({ ...site, gates });
    const texts = Object.values(turned.gates).map((gate) => swingTexts(gate, turned));
    expect(texts).toContainEqual({ hingedAt: 'C', opens: 'to the right, looking from C to B' });
  });

  it('[D30] says nothing of a gate that is not placed', () => {
    const [gate] = Object.values<GateLayout>(layout.gates);
    if (gate === undefined) throw new Error('expected a gate');
    expect(swingTexts({ ...gate, posts: null }, layout)).toBeNull();
  });
});
