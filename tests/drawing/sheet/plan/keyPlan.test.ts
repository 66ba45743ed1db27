import fc from 'fast-check';
import { expect, it } from 'vitest';
import { sharesInBox } from '../../../../src/drawing/explode/sharesInBox.ts';
import { textBox } from '../../../../src/drawing/lettering/textBox.ts';
import { keyPlan } from '../../../../src/drawing/sheet/plan/keyPlan.ts';
import type { PlanTile } from '../../../../src/drawing/sheet/plan/planTiles.ts';
import { handYard } from '../../handYard.ts';
import { textsOf } from '../../textsOf.ts';

const room = { x: 5, y: 6, width: 2.4, height: 1.05 };
const tile = (column: number): PlanTile => ({
  column,
  bounds: { minX: column * 4000, maxX: (column + 1) * 4000, minY: 0, maxY: 4000 },
});
const tiles = [0, 1, 2].map(tile);

it('[D113] no line of a key plan passes through a number, and every number is in its part', () => {
  const corner = fc.record({
    x: fc.integer({ min: 0, max: 12_000 }),
    y: fc.integer({ min: 0, max: 4000 }),
  });
  fc.assert(
    fc.property(fc.array(corner, { minLength: 2, maxLength: 5 }), (corners) => {
      const { layout } = handYard([{ corners, closed: false, maxBay: 120, gates: [] }]);
      const { atoms, links } = keyPlan(layout, tiles, { sheets: [3, 14, 5], here: 1 }, room);
      const texts = textsOf(atoms);
      expect(texts.map(({ text }) => text)).toEqual(['3', '14', '5']);
      texts.forEach(({ at }, n) => {
        const rect = links[n]?.rect ?? room;
        expect(at.x).toBeGreaterThan(rect.x);
        expect(at.x).toBeLessThan(rect.x + rect.width);
        expect(at.y).toBeGreaterThan(rect.y);
        expect(at.y).toBeLessThan(rect.y + rect.height);
      });
      for (const atom of atoms) {
        if (atom.do !== 'stroke') continue;
        let from = atom.outline[0];
        for (const to of atom.outline.slice(1)) {
          if (from !== undefined && 'x' in from && to.go === 'line')
            for (const text of texts) expect(sharesInBox(from, to, textBox(text))).toBeNull();
          from = to;
        }
      }
    }),
  );
});
