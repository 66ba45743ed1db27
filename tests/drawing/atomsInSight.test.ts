import { describe, expect, it } from 'vitest';
import type { Atom } from '../../src/drawing/atom.ts';
import { atomsInSight } from '../../src/drawing/atomsInSight.ts';
import { drawOnPaper } from '../../src/drawing/drawOnPaper.ts';
import { segmentsOutline } from '../../src/drawing/explode/polylineOutline.ts';
import { inkedBounds } from '../../src/drawing/inkedBounds.ts';
import { pens } from '../../src/drawing/pens.ts';
import { planLayers } from '../../src/drawing/plan/drawPlan.ts';
import { boundsOverlap, expandBounds } from '../../src/geometry/bounds.ts';
import { sampleYards } from './sampleYards.ts';
import { textsOf } from './textsOf.ts';

const clip = { minX: 0, minY: 0, maxX: 4, maxY: 4 };
const line = (y: number) =>
  [
    { x: -3, y },
    { x: 9, y },
  ] as const;
const strokeOf = (...ys: readonly number[]): Atom => ({
  do: 'stroke',
  pen: pens.thin,
  outline: segmentsOutline(ys.map(line)),
});

describe('atomsInSight', () => {
  it('leaves out what lies wholly outside, and of a stroke such paths', () => {
    expect(atomsInSight([strokeOf(-1), strokeOf(2), strokeOf(6)], clip)).toEqual([strokeOf(2)]);
    expect(atomsInSight([strokeOf(-1, 1, 3, 6)], clip)).toEqual([strokeOf(1, 3)]);
  });

  it('keeps what only comes near the edge with its pen', () => {
    const beside = strokeOf(-pens.thin.width / 2, 4 + pens.thin.width / 2);
    expect(atomsInSight([beside], clip)).toEqual([beside]);
  });
});

describe.each(sampleYards)('the plan of $name, cut off at a clip', ({ site, layout }) => {
  const primitives = planLayers(site, layout).flatMap((layer) => layer.primitives);
  const projection = { origin: { x: 0, y: 0 }, scale: 1 / 60 };
  const whole = drawOnPaper(primitives, projection).atoms;
  const { minX, minY, maxX, maxY } = inkedBounds(whole) ?? clip;
  const part = { minX, minY, maxX: (minX + maxX) / 2, maxY: (minY + maxY) / 2 };
  const all = drawOnPaper(primitives, projection, { window: part });
  const cut = drawOnPaper(primitives, projection, { window: part, clip: part });

  it('has the same letters, and the same without room', () => {
    expect(textsOf(cut.atoms)).toEqual(textsOf(all.atoms));
    expect(cut.left).toEqual(all.left);
  });

  it('has all that lies in the clip, and less of what does not', () => {
    expect(cut.atoms).toEqual(atomsInSight(all.atoms, part));
    expect(cut.atoms.length).toBeLessThan(all.atoms.length);
    const near = expandBounds(part, 0.1);
    for (const atom of cut.atoms) {
      const around = inkedBounds([atom]);
      expect(around !== null && boundsOverlap(around, near)).toBe(true);
    }
  });
});
