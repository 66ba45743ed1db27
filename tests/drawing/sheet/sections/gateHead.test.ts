import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gateHead } from '../../../../src/drawing/sheet/sections/gateHead.ts';
import { textWidth } from '../../../../src/drawing/textWidth.ts';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import type { AsSet } from '../../../../src/site/asSet.ts';
import type { Site } from '../../../../src/site/site.ts';
import { firstGate } from '../../../engine/plainYard.ts';
import { found, onlyGate } from '../../../engine/set/setYard.ts';
import { gap, swing, wayYard } from '../../../engine/wayYard.ts';
import { overlapsOf, textsOf } from '../../textsOf.ts';

const blockOf = (site: Site, asSet: AsSet | null, width: number, title = 'Drive gate') => {
  const id = firstGate(site);
  const now = { ...site, gates: { [id]: { ...onlyGate(site), asSet } } };
  const gate = layOutSite(now).gates[id];
  if (gate === undefined) throw new Error('no gate');
  return gateHead(title, gate, { site: now, width });
};
const words = (site: Site, asSet: AsSet | null): string =>
  textsOf(blockOf(site, asSet, 7).atoms)
    .map(({ text }) => text)
    .join(' | ');
const labels = ['As set: top', 'bottom', 'by', 'on'];

describe('gateHead', () => {
  it.each(['Drive gate, H–I: hold 10 ft', 'A gate with a very long name '.repeat(3)])(
    '[D63] leaves room for a hand to write what was set, by whom and when, beside or under %s',
    (title) => {
      for (const width of [6.6, 7.4, 11]) {
        const { atoms } = blockOf(wayYard(swing), null, width, title);
        const [, ...rest] = textsOf(atoms);
        expect(rest.map(({ text }) => text)).toEqual(labels);
        expect(atoms.filter((atom) => atom.do === 'stroke')).toHaveLength(4);
        const ends = [...rest.slice(1).map(({ at }) => at.x), width];
        rest.forEach(({ text, size, weight, at }, n) => {
          const room = (ends[n] ?? width) - at.x - textWidth(text, size, weight);
          // what a length, a length, initials and a date take by hand; ours
          expect(room).toBeGreaterThan([0.75, 0.75, 0.45, 0.6][n] ?? 0);
        });
      }
    },
  );

  it('[D63] prints what is recorded, leaves the rest to be written, and says the verdict', () => {
    const told = words(wayYard(swing), found(47, null));
    expect(told).toContain(`As set: top | 3'-11" | bottom | by | AB`);
    expect(told).toMatch(/As set: Too narrow by 7\/8"\. It leaves/);
    expect(words(wayYard(swing), found(48, 48.25))).toContain(`bottom | 4'-0 1/4"`);
    expect(words(wayYard(gap), found(61, 60))).toContain('As set: Wider than wanted by 1"');
  });

  it('[D63] cuts no length short, even where the title leaves little room', () => {
    const size = fc.integer({ min: 1, max: 64 * 400 }).map((n) => n / 16);
    const width = fc.double({ min: 6.6, max: 9, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(size, size), width, ([top, bottom], column) => {
        const title = `Delivery gate, D–E: hold 30'-0"`;
        const { atoms } = blockOf(wayYard(swing), found(top, bottom), column, title);
        const said = textsOf(atoms).map(({ text }) => text);
        expect(said.slice(0, 9)).toContain(title);
        expect(said.filter((text) => text.endsWith('…'))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it('[D9] no text overlaps another or leaves the column, whatever was written', () => {
    const size = fc.integer({ min: 1, max: 64 * 400 }).map((n) => n / 64);
    const name = fc.string({ maxLength: 200 });
    const column = fc.double({ min: 6.6, max: 16, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(size, size), name, column, ([top, bottom], by, width) => {
        const asSet = found(top, bottom, { by, on: by });
        const { atoms } = blockOf(wayYard(swing), asSet, width, by);
        expect(overlapsOf(atoms)).toEqual([]);
        for (const { at, text: written, size: em, weight } of textsOf(atoms)) {
          expect(at.x + textWidth(written, em, weight)).toBeLessThanOrEqual(width + 1e-9);
        }
      }),
      { numRuns: 40 },
    );
  });
});
