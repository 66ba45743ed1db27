import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Reference } from '../../../src/engine/ties/reference.ts';
import { twoTapes, type TwoTapes } from '../../../src/engine/ties/twoTapes.ts';
import { distance } from '../../../src/geometry/distance.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { tied } from '../../../src/geometry/tied.ts';
import { usualTrusts } from '../../../src/site/trusts.ts';
import type { LengthStyle } from '../../../src/units/lengthStyle.ts';

const mark = (name: string, x: number, y: number, more: Partial<Reference> = {}): Reference => ({
  mark: `mark:${name}`,
  name,
  at: { x, y },
  of: 'building',
  sketched: false,
  ...more,
});

const how = (lengths: LengthStyle) => ({ lengths, trusts: usualTrusts });
const feet = how({ system: 'feet', fraction: 16 });

/** Where two tapes meet. */
const meet = ({ first, second, side }: TwoTapes): SitePoint => {
  const base = { start: first.from.at, end: second.from.at };
  const found = tied(base, { start: first.reads, end: second.reads, side });
  if (found.kind !== 'met') throw new Error(`expected tapes that meet, found ${found.kind}`);
  return found.at;
};

const namesIn = ({ first, second }: TwoTapes): string[] => [first.from.name, second.from.name];

describe('twoTapes', () => {
  it('[P29] gives the distances of a published direction-direction intersection, and its point again', () => {
    // J. Mahun, Open Access Surveying Library, chapter B COGO: L and M with their directions to P;
    // the distances are worked out from his figures
    const [l, m] = [mark('L', 2255.9 * 12, 614.8 * 12), mark('M', 2517.03 * 12, 791.53 * 12)];
    const p = { x: 2429.496 * 12, y: 524.902 * 12 };
    const found = twoTapes(p, [m, l], how({ system: 'm', fraction: 16 }));
    if (found === null) throw new Error('expected a tie');
    expect(namesIn(found)).toEqual(['L', 'M']);
    // a millimetre, to which it is written, is 0.0033 ft
    expect(found.first.reads / 12).toBeCloseTo(195.492, 2);
    expect(found.second.reads / 12).toBeCloseTo(280.629, 2);
    expect(found.side).toBe('right');
    expect([found.first.over, found.second.over]).toEqual([true, true]);
    expect(distance(meet(found), p)).toBeLessThan(0.05);
  });

  it('[P29] two tapes on the side told give the place again, as near as they are rounded', () => {
    const place = fc.record({
      x: fc.integer({ min: -15000, max: 15000 }).map((n) => n / 10),
      y: fc.integer({ min: -15000, max: 15000 }).map((n) => n / 10),
    });
    const styles = fc.constantFrom<LengthStyle>(
      { system: 'feet', fraction: 16 },
      { system: 'inches', fraction: 8 },
      { system: 'mm', fraction: 16 },
      { system: 'decimal feet', fraction: 16 },
    );
    const steps = { feet: 1 / 16, inches: 1 / 8, mm: 1 / 25.4, 'decimal feet': 0.12, m: 0 };
    let ties = 0;
    fc.assert(
      fc.property(
        place,
        fc.array(place, { minLength: 2, maxLength: 9 }),
        styles,
        (at, all, style) => {
          const marks = all.map(({ x, y }, n) => mark(`${n}`, x, y));
          const found = twoTapes(at, marks, how(style));
          if (found === null) return;
          ties += 1;
          // each tape is off by half a step at most, and a slip of `slip` shifts the place by `shift`
          const most = steps[style.system] * (found.shift / found.slip);
          expect(distance(meet(found), at)).toBeLessThan(1.1 * most + 1e-9);
        },
      ),
    );
    expect(ties).toBeGreaterThan(20);
  });

  it('[P29] says how far the place shifts when one tape is read wrong', () => {
    // square: by the slip itself; tapes 30 degrees apart: by twice the slip
    const at = { x: 0, y: 0 };
    const square = twoTapes(at, [mark('a', 240, 0), mark('b', 0, 240)], feet);
    expect(square?.shift).toBeCloseTo(1 / 4, 9);
    const [x, y] = [240 * Math.cos(Math.PI / 6), 240 * Math.sin(Math.PI / 6)];
    const flat = twoTapes(at, [mark('a', 240, 0), mark('b', x, y)], feet);
    expect(flat?.shift).toBeCloseTo(1 / 2, 9);
    if (flat === null) throw new Error('expected a tie');
    const wrong = meet({ ...flat, first: { ...flat.first, reads: (240 + 1 / 4) as never } });
    expect(distance(wrong, at)).toBeCloseTo(1 / 2, 2);
  });

  it('[P30] of all pairs takes the one of short tapes that cross near to square', () => {
    const at = { x: 0, y: 0 };
    const all = [
      mark('far', 0, 1100),
      mark('a', 300, 0),
      mark('flat', 330, 20),
      mark('b', 0, -300),
    ];
    const found = twoTapes(at, all, feet);
    if (found === null) throw new Error('expected a tie');
    expect(namesIn(found)).toEqual(['a', 'b']);
    expect(found.check?.from.name).toBe('flat');
  });

  it('[P30] leaves what no reading holds, what is beyond the tape and trees to last', () => {
    const at = { x: 0, y: 0 };
    const good = [mark('a', 600, 0), mark('b', 0, 600)];
    const others = [
      mark('sketched', -100, 0, { sketched: true }),
      mark('tree', 0, -100, { of: 'tree' }),
      mark('long', -1300, 0),
    ];
    const found = twoTapes(at, [...others, ...good], feet);
    expect(found === null ? [] : namesIn(found)).toEqual(['a', 'b']);
    const rest = twoTapes(at, [others[1]!, good[0]!], feet);
    expect(rest === null ? [] : namesIn(rest)).toEqual(['tree', 'a']);
    const over = twoTapes(at, [others[2]!, good[1]!], feet);
    expect([over?.first.over, over?.second.over]).toEqual([false, true]);
  });

  it('[P30] takes no tapes that cross too flat, and no mark that is in the way of the hole', () => {
    const at = { x: 0, y: 0 };
    expect(twoTapes(at, [mark('a', 300, 0), mark('b', -300, 20)], feet)).toBeNull();
    expect(twoTapes(at, [mark('a', 8, 0), mark('b', 0, 300)], feet)).toBeNull();
    expect(twoTapes(at, [], feet)).toBeNull();
  });
});
