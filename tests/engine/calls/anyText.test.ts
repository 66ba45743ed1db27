import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossing } from '../../../src/engine/calls/crossing.ts';
import { readCalls } from '../../../src/engine/calls/readCalls.ts';
import { slips } from '../../../src/engine/calls/slips.ts';
import { traverse } from '../../../src/engine/calls/traverse.ts';
import { plainDeed } from '../../../src/units/plainDeed.ts';
import { callsOf, walked } from './read.ts';

/** Words of deeds, whole and in pieces, as people and scanners write them. */
const words = fc.constantFrom(
  ...`thence Thence THENCE beginning BEGINNING_at_a_stone COMMENCING_at point_of_beginning POB
  TRUE_POINT_OF_BEGINNING N S E W north South due_east N_26°10'30"_E S75-25E N_26°l0'_E N_126_E az_117°22'40"
  285.10 100_feet 100' 4_chains 25_links 16½_rods 86.90_m (86.90_m) 1,250.5_ft 5/8_inch 0_feet 99999999_feet 1/0_rods
  curve to_the_right left radius radius_of_125.00_feet 125_foot_radius arc chord_bearing central_angle 34°12'20" Δ= R=50
  tangent non-tangent radial_line concave_westerly to_an_iron_pin to_a_stake containing 6.43_acres in_all passing
  running TH then_along BEG_AT 32_p. north 1O_feet along said_curve the and , ; : . ( ) ' " ° - \n \n\n 1) (2) ½ İ § \u0000 \ud800 following_courses`
    .split(/[ \n]+/)
    .map((word) => word.replaceAll('_', ' ').replaceAll('\\n', '\n')),
);
const texts = fc.array(words, { maxLength: 60 }).map((all) => all.join(' '));

/** What of a text is more than blanks and stops. */
const letters = (text: string): string => plainDeed(text).replace(/[\s;:,.]+/g, '');

describe('any text of calls', () => {
  it('[J12] never throws, in words of deeds or none', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(fc.oneof(texts, fc.string({ unit: 'binary', maxLength: 200 })), (text) => {
        const calls = readCalls(text);
        if (!calls.ok) return;
        const told = traverse(calls.value);
        expect(told.points.length).toBe(calls.value.courses.length + 1);
        expect(told.points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(
          true,
        );
        slips(told, 5000);
        crossing(told.lot?.corners ?? []);
      }),
      { numRuns: 600 },
    );
  });

  it('[J1] is in the pieces whole, in order, but for blanks and stops', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(texts, (text) => {
        const { pieces } = callsOf(text);
        expect(pieces.map((piece) => letters(piece.text)).join('')).toBe(letters(text));
        const lines = pieces.map(({ line }) => line);
        expect(lines).toEqual(lines.toSorted((a, b) => a - b));
      }),
      { numRuns: 600 },
    );
  });

  it('[J1] that is too long is refused in one line', () => {
    const long = readCalls('N 26 E 100\n'.repeat(10_000));
    expect(long).toEqual({
      ok: false,
      reason: 'the calls have 110000 characters: expected at most 100000',
    });
    expect(readCalls('N 1 E 5\n'.repeat(2_001))).toEqual({
      ok: false,
      reason: 'the calls have 2001 pieces: expected at most 2000',
    });
  });

  it(
    '[J12] the longest text is read in seconds and not in hours, whatever is said over and over',
    { timeout: 60_000 },
    () => {
      const all = [
        `thence N 26°10' E, 285.10 feet to an iron pin on the line of Smith;\n`,
        `1°`,
        `n 26°10' `,
        `1/2' `,
        'to the curve of ',
        'thence along a curve to the left; radius 5 feet; ',
        'running from said x ',
        'a; ',
      ];
      for (const text of all) {
        const begun = performance.now();
        readCalls(text.repeat(Math.floor(100_000 / text.length)));
        expect(performance.now() - begun).toBeLessThan(5000);
      }
    },
  );
});

describe('what is wrong with a lot', () => {
  it('[J10] one bearing in another quadrant, or one distance, is found again', () => {
    // ours: five sides of a lot of no place, no two of them parallel
    const lot = (third: string, fifth = "N53°05'W 647.20") =>
      traverse({
        ...callsOf(`N26°10'E 285.10\nS75°25'E 610.45\n${third}\nN1°42'W 203.00\n${fifth}`),
        ends: 'at the beginning',
      });
    expect(slips(lot(`S15°30'W 720.48`), 2000)).toEqual([]);
    // three sides of a square and a fourth that runs the wrong way: mended, it closes to rounding
    const [exact] = slips(walked(`N 0 E 100\nN 90 E 100\nS 0 E 100\nN 90 E 100`), 2000);
    expect(exact?.precision).toBe(Infinity);
    const [turned, ...others] = slips(lot(`S15°30'E 720.48`), 2000);
    expect(turned).toMatchObject({ course: 2, kind: 'bearing' });
    expect(((turned?.azimuth ?? 0) * 180) / Math.PI).toBeCloseTo(195.5, 9);
    expect(others).toEqual([]);
    const [long, ...more] = slips(lot(`S15°30'W 720.48`, `N53°05'W 674.20`), 2000);
    expect(long).toMatchObject({ course: 4, kind: 'distance' });
    expect(Math.abs((long?.length ?? NaN) / 12 - 647.2)).toBeLessThan(1);
    expect(long?.precision).toBeGreaterThan(2000);
    expect(more).toEqual([]);
  });

  it('[J11] sides that cross are told, neighbours are not', () => {
    const corners = (text: string) => traverse(callsOf(text)).lot?.corners ?? [];
    expect(
      crossing(corners('due north 100\ndue east 100\ndue south 100\ndue west 100')),
    ).toBeNull();
    const bow = corners('N 45 E 141.4214\ndue south 100\nN 45 W 141.4214\ndue south 100');
    expect(bow.length).toBe(4);
    expect(crossing(bow)).toEqual([0, 2]);
  });
});
