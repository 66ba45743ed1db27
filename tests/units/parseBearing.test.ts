import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatBearing } from '../../src/units/formatBearing.ts';
import { parseBearing } from '../../src/units/parseBearing.ts';
import { fromDegrees, toDegrees } from '../../src/units/radians.ts';

const degrees = (text: string): number | string => {
  const bearing = parseBearing(text);
  return bearing.ok ? toDegrees(bearing.value) : bearing.reason;
};

const written = (degree: number, minute: number, second: number) => [
  `N ${degree}°${minute}'${second}" E`,
  `n${degree}-${minute}-${second}e`,
  `N. ${degree}º ${minute}′ ${second}″ E.`,
  `N ${degree} ${minute} ${second} E`,
  `N${degree}d${minute}m${second}sE`,
  `North ${degree} degrees ${minute} minutes ${second} seconds East`,
  `NORTH ${degree} DEGREES, ${minute} MINUTES AND ${second} SECONDS EAST`,
  `N ${degree}o${minute}'${second}'' E`,
  `${degree}°${minute}'${second}"`,
  `azimuth ${degree}-${minute}-${second}`,
];

describe('parseBearing', () => {
  it('[U12] reads one bearing in every way of writing it to the very same angle', () => {
    fc.assert(
      fc.property(fc.nat(89), fc.nat(59), fc.nat(59), (degree, minute, second) => {
        const angle = (degree * 3600 + minute * 60 + second) / 3600;
        const all = written(degree, minute, second).map(degrees);
        expect(all).toEqual(all.map(() => toDegrees(fromDegrees(angle))));
      }),
    );
  });

  it.each([
    [`N 26°10'30" E`, 26.175],
    [`S 26°10'30" E`, 180 - 26.175],
    [`S 26°10'30" W`, 180 + 26.175],
    [`N 26°10'30" W`, 360 - 26.175],
    ['N 26.175° W', 360 - 26.175],
    [`117°22'40"`, 117 + 22 / 60 + 40 / 3600],
    ['198.175', 198.175],
    ['due north', 0],
    ['East', 90],
    ['due S', 180],
    ['N 90 W', 270],
    ['N 0 W', 0],
  ])('[U12] %s is %f degrees clockwise from north', (text, angle) => {
    expect(degrees(text)).toBeCloseTo(angle, 9);
  });

  it.each([
    ['', '“” is empty: expected a bearing'],
    ['N 126 E', '“126” in a bearing is over 90°'],
    ['N 26°70 E', '“26°70” has 60 minutes or seconds or more'],
    ['N 26.5°10 E', 'has decimals before its last part'],
    ['N 26°1O E', '“26°1o” is not an angle'],
    ['N 26°l0 E', '“N 26°l0 E” is not a bearing'],
    ['N 26 X', '“N 26 X” is not a bearing'],
    ['N E', '“N E” is not a bearing'],
    ['N26-10-30-5E', 'is not an angle'],
    ['360', 'is a whole turn or more'],
    ['north by east', 'is not a bearing'],
  ])('[U12] %j is refused in one line', (text, reason) => {
    expect(degrees(text)).toContain(reason);
    expect(degrees(text)).toMatch(/^“[^\n]*expected[^\n]*$/);
  });

  it('[U13] a bearing is written by its quadrant, and reads back to its second', () => {
    fc.assert(
      fc.property(fc.nat(360 * 3600 - 1), (seconds) => {
        const text = formatBearing(fromDegrees(seconds / 3600));
        expect(text).toMatch(
          /^(?:[NS] \d{1,2}°[0-5]\d'[0-5]\d" [EW]|due (?:north|east|south|west))$/,
        );
        expect(Math.round(Number(degrees(text)) * 3600)).toBe(seconds);
      }),
    );
  });

  it('[U13] rounds over the compass and wraps', () => {
    expect(formatBearing(fromDegrees(359.99999))).toBe('due north');
    expect(formatBearing(fromDegrees(89.99999))).toBe('due east');
    expect(formatBearing(fromDegrees(-26.175))).toBe(`N 26°10'30" W`);
    expect(formatBearing(fromDegrees(180.5))).toBe(`S 0°30'00" W`);
  });

  it('[U12] no text makes it throw', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        expect(typeof parseBearing(text).ok).toBe('boolean');
      }),
    );
  });
});
