import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Atom } from '../../../src/drawing/atom.ts';
import { bareDetail } from '../../../src/drawing/detail/bareDetail.ts';
import { gateDetail } from '../../../src/drawing/detail/gateDetail.ts';
import type { GateSight } from '../../../src/drawing/detail/gateSight.ts';
import { outlinePieces } from '../../../src/drawing/explode/outlinePieces.ts';
import { letterExtent, textBox } from '../../../src/drawing/lettering/textBox.ts';
import { bearing } from '../../../src/geometry/bearing.ts';
import { boxesOverlap } from '../../geometry/boxesOverlap.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { midpoint } from '../../../src/geometry/midpoint.ts';
import { corners } from '../../../src/geometry/orientedBox.ts';
import type { Site } from '../../../src/site/site.ts';
import { sampleYards } from '../sampleYards.ts';
import { overlapsOf, textsOf } from '../textsOf.ts';
import { anyGate, sightsOf } from './anyGate.ts';

/** Texts through which something goes that is drawn, fabric apart. */
const struck = (atoms: readonly Atom[]): string[] => {
  const pieces = atoms.flatMap((atom) =>
    atom.do === 'stroke'
      ? outlinePieces(atom.outline).map(([a, b]) => ({
          centre: midpoint(a, b),
          halfWidth: distance(a, b) / 2,
          halfHeight: atom.pen.width / 2,
          angle: bearing(a, b),
        }))
      : [],
  );
  return textsOf(atoms)
    .filter((text) => pieces.some((piece) => boxesOverlap(piece, textBox(text))))
    .map(({ text }) => `a line goes through ${text}`);
};

const faults = (sight: GateSight, site: Site, ratio: number): string[] => {
  const bare = bareDetail(sight, site, ratio, null);
  const { atoms, width, height, left } = gateDetail(bare);
  const texts = textsOf(atoms);
  const out = texts.filter((text) =>
    corners(textBox(text)).some(
      ({ x, y }) => x < -1e-9 || y < -1e-9 || x > width + 1e-9 || y > height + 1e-9,
    ),
  );
  // 2.5 mm is the least height of letters on ISO sheets (ISO 3098, from memory)
  const small = texts.filter(({ size }) => size * letterExtent.capital * 25.4 < 2.5);
  const larger = bare.width > width || bare.height > height;
  return [
    ...(larger ? ['larger before its texts have places'] : []),
    ...overlapsOf(atoms),
    ...struck(atoms),
    ...left.map((text) => `no room for ${text}`),
    ...out.map(({ text }) => `${text} is outside`),
    ...small.map(({ text }) => `${text} is too small`),
  ];
};

const scales = [24, 48, 64, 96, 120];

describe('gateDetail', () => {
  it.each(sampleYards)('[D124] of $name has no text on a text or a line', ({ site, layout }) => {
    for (const sight of sightsOf(site, layout)) {
      for (const ratio of scales) expect(faults(sight, site, ratio)).toEqual([]);
    }
  });

  it('[D124] of any gate has no text on a text or a line, and says all it has to', () => {
    fc.assert(
      fc.property(anyGate, fc.constantFrom(...scales), (site, ratio) => {
        for (const sight of sightsOf(site)) expect(faults(sight, site, ratio)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
