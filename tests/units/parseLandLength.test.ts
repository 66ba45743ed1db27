import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { landLengths } from '../../src/units/landLengths.ts';
import { inchesIn, parseLandLength } from '../../src/units/parseLandLength.ts';

const feet = (text: string): number | string => {
  const length = parseLandLength(text);
  return length.ok ? length.value / 12 : length.reason;
};

describe('parseLandLength', () => {
  it.each([
    ['285.10', 285.1],
    [`285.10'`, 285.1],
    ['1,250.5 Feet', 1250.5],
    ['100-foot', 100],
    [`95'-6"`, 95.5],
    ['95 ft. 6 in.', 95.5],
    ['95 feet and 6 inches', 95.5],
    // a Gunter's chain is 66 ft, 100 links or 4 rods, a rod 16 1/2 ft: Civil Engineering Formulas, ch. 7
    ['1 chain', 66],
    ['4 chains 25 links', 280.5],
    ['4 ch. and 25 lks.', 280.5],
    ['4.25 chs', 280.5],
    ['16 1/2 rods', 272.25],
    ['16½ perches', 272.25],
    ['1 pole', 16.5],
    ['½ chain', 33],
    ['40 rods', 660],
    ['5 yards 2 feet', 17],
    // 80 chains to a mile, 10 to a furlong
    ['1/2 mile', 2640],
    ['1 furlong', 660],
    ['50 ft 6 1/2 in', 50 + 6.5 / 12],
    ['12 chains 34 li', 814.44],
    ['12 ch. 34 l.', 814.44],
    [`50'-6-1/2"`, 50 + 6.5 / 12],
    // 1200/3937 m to a US survey foot, 0.3048 m to an international one: 85 FR 62698
    ['3937 US survey feet', 1200 / 0.3048],
    // 33 1/3 in: Texas Natural Resources Code, 21.077; from memory
    ['36 varas', 100],
    // 1 ft = 0.3048 m: 85 FR 62698
    ['30.48 m', 100],
    ['30.48 metres', 100],
    ['30.48 Meters', 100],
  ])('[U14] %s is %f ft', (text, expected) => {
    expect(feet(text)).toBeCloseTo(expected, 9);
  });

  it('[U14] a number without a unit is in the unit asked for', () => {
    expect(parseLandLength('4.25', 'chains')).toEqual({ ok: true, value: 4.25 * 792 });
    expect(inchesIn('metres') * 0.3048).toBeCloseTo(12, 12);
  });

  it('[U14] a US survey foot is 2 parts in a million longer, which is less than is read', () => {
    // 1200/3937 m against 0.3048 m: 1/40 in over 1,000 ft
    const survey = 1200 / 3937 / 0.3048;
    expect((survey - 1) * 12_000).toBeLessThan(1 / 40);
    expect((survey - 1) * 12_000).toBeGreaterThan(1 / 50);
  });

  it.each([
    ['', 'is empty'],
    ['far', 'is not a distance'],
    ['10 feet 20 feet', 'is not a distance'],
    ['5/8 inch', 'is not a distance'],
    ['1/0 rods', 'is not a distance'],
    ['12 cubits', 'is not a distance'],
    ['34 L', 'is not a distance'],
    ['100 feet, 34 L', 'is not a distance'],
    ['-5 feet', 'is not a distance'],
  ])('[U14] %j is refused in one line', (text, reason) => {
    expect(feet(text)).toContain(`“${text}” ${reason}: expected a distance such as 285.10 feet`);
  });

  it('[U14] in running text a pin is no length, and a smaller unit is added to the larger', () => {
    const text =
      'run 4 chains and 25 links to a 5/8 inch rebar, no. 3 rod, 20 feet off 3 chains, 10 feet';
    const found = landLengths(text).map(({ at, end, length }) => [
      text.slice(at, end),
      length / 12,
    ]);
    expect(found).toEqual([
      ['4 chains and 25 links', expect.closeTo(280.5, 9)],
      ['20 feet', 20],
      ['3 chains, 10 feet', 208],
    ]);
  });

  it('[U14] no text makes it throw', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        expect(typeof parseLandLength(text).ok).toBe('boolean');
      }),
    );
  });
});
