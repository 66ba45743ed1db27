import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { homographyOf, type FourTies } from '../../../src/geometry/homographyOf.ts';
import { pictureMap } from '../../../src/geometry/pictureMap.ts';
import { rectangleTies } from '../../../src/geometry/rectangleTies.ts';
import type { Tie } from '../../../src/geometry/tie.ts';
import { addUnderlay } from '../../../src/site/edits/addUnderlay.ts';
import { changeUnderlay } from '../../../src/site/edits/changeUnderlay.ts';
import { keepUnderlay } from '../../../src/site/edits/keepUnderlay.ts';
import { placeUnderlay } from '../../../src/site/edits/placeUnderlay.ts';
import { removeUnderlay } from '../../../src/site/edits/removeUnderlay.ts';
import { scaleUnderlay } from '../../../src/site/edits/scaleUnderlay.ts';
import { straightenUnderlay } from '../../../src/site/edits/straightenUnderlay.ts';
import { tieUnderlay } from '../../../src/site/edits/tieUnderlay.ts';
import { limits } from '../../../src/site/limits.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import { sheetText } from '../../../src/site/sheetText.ts';
import type { Site } from '../../../src/site/site.ts';
import { tiesOf } from '../../../src/site/tiesOf.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { anyAngle, sitePoint } from '../../geometry/arbitraries.ts';
import { sampleSite } from '../sampleSite.ts';

const id = 'underlay:1';
const picture = `picture:${'ab'.repeat(32)}` as const;
const laid = {
  label: 'Plat',
  picture,
  file: 'plat.jpg',
  width: 400,
  height: 300,
  ties: [
    { u: 0, v: 0, x: 0, y: 300 },
    { u: 400, v: 300, x: 400, y: 0 },
  ],
} as const;
const one = addUnderlay(sampleSite, laid);
const bytes = { type: 'image/jpeg', data: 'AAAA' } as const;

const underlayOf = (site: Site) => {
  const underlay = site.underlays[id];
  if (underlay === undefined) throw new Error('expected the underlay');
  return underlay;
};
const mapOf = (site: Site) => pictureMap(tiesOf(underlayOf(site)));

/** A court of 60 ft by 40 ft as seen aslant. */
const aslant: FourTies = [
  { u: 100, v: 50, x: 0, y: 480 },
  { u: 300, v: 60, x: 720, y: 480 },
  { u: 390, v: 280, x: 720, y: 0 },
  { u: 10, v: 270, x: 0, y: 0 },
];

describe('pictures under the drawing', () => {
  it('[S50] one is laid by two points, all of it shows, its size is a guess, and the file opens with it', () => {
    expect(underlayOf(one)).toEqual({
      label: 'Plat',
      picture,
      file: 'plat.jpg',
      width: 400,
      height: 300,
      ties: { 'tie:1': laid.ties[0], 'tie:2': laid.ties[1] },
      size: 'guessed',
      shows: 1,
      locked: false,
    });
    const kept = keepUnderlay(one, id, bytes);
    expect(openSite(saveSite(kept))).toEqual({ ok: true, value: kept });
    expect(one.marks).toBe(sampleSite.marks);
    const two = addUnderlay(one, { ...laid, label: 'Photo' });
    expect(Object.keys(two.underlays)).toEqual([id, 'underlay:2']);
    expect(Object.keys(two.underlays['underlay:2']?.ties ?? {})).toEqual(['tie:3', 'tie:4']);
  });

  it('[S50] its bytes are in the file or beside it, and go with the last picture that shows them', () => {
    const kept = keepUnderlay(one, id, bytes);
    expect(kept.pictures[picture]).toEqual(bytes);
    expect(kept.underlays).toBe(one.underlays);
    expect(keepUnderlay(kept, id, bytes)).toBe(kept);
    expect(keepUnderlay(kept, id, null).pictures).toEqual({});
    const twice = addUnderlay(kept, laid);
    expect(removeUnderlay(twice, id).pictures).toBe(kept.pictures);
    const none = removeUnderlay(removeUnderlay(twice, id), 'underlay:2');
    expect(none).toEqual(sampleSite);
  });

  it('[S51] one too large for the file is refused in one line, alone or with the others', () => {
    const large = { ...bytes, data: 'A'.repeat(limits.pictureText + 4) };
    expect(() => keepUnderlay(one, id, large)).toThrow(
      'picture in the file: expected at most 6.0 MB, found 6.1 MB',
    );
    const full = [1, 2, 3].reduce<Site>((site, n) => {
      const more = addUnderlay(site, {
        ...laid,
        picture: `picture:${String(n).repeat(64)}`,
      });
      const data = 'A'.repeat(n === 3 ? 4 : limits.picturesText / 2 - 4);
      return keepUnderlay(more, `underlay:${n}`, { ...bytes, data });
    }, sampleSite);
    const eight = { ...bytes, data: 'A'.repeat(12) };
    expect(() => keepUnderlay(full, 'underlay:3', eight)).toThrow(
      /^picture in the file: expected at most 10\.8 MB of pictures, found 10\.9 MB with this one$/,
    );
    expect(() => keepUnderlay(one, id, { ...bytes, data: 'A*==' })).toThrow(/base64/);
  });

  it('[S52] moved, turned and made larger as a whole: every distance on it grows alike', () => {
    fc.assert(
      fc.property(
        fc.record({
          about: sitePoint,
          turn: anyAngle,
          times: fc.double({ min: 0.01, max: 20, noNaN: true }),
          by: sitePoint,
        }),
        fc.constantFrom<Site>(one, straightenUnderlay(one, id, aslant)),
        ({ about, times, by, turn }, site) => {
          const near = { x: about.x / 1e3, y: about.y / 1e3 };
          const placed = placeUnderlay(site, id, { about: near, turn, times, by });
          const [before, after] = [mapOf(site), mapOf(placed)];
          const [a, b] = [
            { x: 100, y: 200 },
            { x: 250, y: 90 },
          ];
          const was = distance(before.toSite(a), before.toSite(b));
          const is = distance(after.toSite(a), after.toSite(b));
          expect(Math.abs(is - times * was)).toBeLessThan(1e-4 * (1 + times));
        },
      ),
    );
  });

  it('[S52] moved it keeps the size that was told, made larger it is guessed again', () => {
    const told = scaleUnderlay(one, id, {
      from: { x: 0, y: 0 },
      to: { x: 400, y: 0 },
      length: inches(600),
    });
    const still = { about: { x: 0, y: 0 }, turn: radians(0), times: 1, by: { x: 5, y: 7 } };
    expect(underlayOf(placeUnderlay(told, id, still)).size).toBe('told');
    expect(underlayOf(placeUnderlay(told, id, { ...still, times: 2 })).size).toBe('guessed');
    expect(() => placeUnderlay(told, id, { ...still, times: 0 })).toThrow(
      'size: expected more than 0 times, found 0',
    );
    expect(placeUnderlay(told, id, { ...still, by: { x: 0, y: 0 } })).toBe(told);
  });

  it('[S53] a known distance on it gives its size; the first point stays, and so does the way to the second', () => {
    fc.assert(
      fc.property(
        fc.record({ x: fc.integer({ min: 0, max: 190 }), y: fc.integer({ min: 0, max: 290 }) }),
        fc.record({ x: fc.integer({ min: 200, max: 400 }), y: fc.integer({ min: 0, max: 290 }) }),
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.boolean(),
        (from, to, far, straight) => {
          const site = straight ? straightenUnderlay(one, id, aslant) : one;
          const scaled = scaleUnderlay(site, id, { from, to, length: inches(far) });
          const [before, after] = [mapOf(site), mapOf(scaled)];
          const [a, b] = [before.toSite(from), before.toSite(to)];
          const [c, d] = [after.toSite(from), after.toSite(to)];
          expect(distance(a, c)).toBeLessThan(1e-6);
          expect(distance(c, d)).toBeCloseTo(far, 5);
          const off = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
          expect(Math.abs(off) / distance(a, b)).toBeLessThan(1e-4);
          expect(underlayOf(scaled).size).toBe('told');
        },
      ),
    );
    const spot = { from: { x: 5, y: 5 }, to: { x: 5, y: 5 }, length: inches(9) };
    expect(() => scaleUnderlay(one, id, spot)).toThrow(
      'distance: expected two points of the picture, found both on one spot',
    );
    expect(() =>
      scaleUnderlay(one, id, { ...spot, to: { x: 9, y: 5 }, length: inches(0) }),
    ).toThrow(/^distance: expected more than 0, found 0"$/);
    const straight = straightenUnderlay(one, id, aslant);
    const beyond = [...Array(400).keys()]
      .map((n) => ({ x: 50 * (n % 20) - 500, y: 200 * Math.floor(n / 20) - 2000 }))
      .find((at) => mapOf(straight).depth(at) < 0)!;
    expect(() => scaleUnderlay(straight, id, { ...spot, to: beyond, length: inches(90) })).toThrow(
      'distance: expected two points of the ground, found one beyond its horizon',
    );
  });

  it('[S54] four points straighten it, two lay it as it was taken again', () => {
    const straight = straightenUnderlay(one, id, aslant);
    for (const { u, v, x, y } of aslant) {
      expect(distance(mapOf(straight).toSite({ x: u, y: v }), { x, y })).toBeLessThan(1e-6);
    }
    expect(Object.keys(underlayOf(straight).ties)).toEqual(['tie:1', 'tie:2', 'tie:3', 'tie:4']);
    const again = tieUnderlay(straight, id, [aslant[0], aslant[2]]);
    expect(Object.keys(underlayOf(again).ties)).toEqual(['tie:1', 'tie:2']);
    const row = aslant.map((tie) => ({ ...tie, v: 50 })) as unknown as FourTies;
    expect(() => straightenUnderlay(one, id, row)).toThrow(
      'underlays › underlay:1 › ties: three of the points are in a row on the picture',
    );
    const spot = aslant.map((tie) => ({ ...tie, x: 1, y: 1 })) as unknown as [Tie, Tie];
    expect(() => tieUnderlay(one, id, [spot[0], spot[1]])).toThrow(/on one spot of the ground$/);
  });

  it('[S54] corners of a rectangle of known sides make it one, from the corner and the way that it has', () => {
    const map = mapOf(one);
    const corners = aslant.map(({ u, v }) => ({ x: u, y: v }));
    for (const round of [corners, corners.toReversed()]) {
      const ties = rectangleTies(map, round as never, { first: 720, second: 480 });
      if (ties === null) throw new Error('expected ties');
      const [a, b, c, d] = ties;
      expect([distance(a, b), distance(b, c), distance(c, d), distance(d, a)]).toEqual(
        [720, 480, 720, 480].map((side) => expect.closeTo(side, 9) as number),
      );
      expect(distance(a, c)).toBeCloseTo(Math.hypot(720, 480), 9);
      expect(a).toMatchObject(map.toSite({ x: a.u, y: a.v }));
      const site = straightenUnderlay(one, id, ties);
      // the map of the same four points by hand, without the site
      expect(mapOf(site).toGround).toEqual(homographyOf(ties));
    }
    const flat = { x: 10, y: 10 };
    expect(rectangleTies(map, [flat, flat, flat, flat], { first: 1, second: 1 })).toBeNull();
  });

  it('[S55] a locked one is not laid elsewhere; it can be faded, named, opened and removed', () => {
    const locked = changeUnderlay(one, id, { locked: true });
    const still = { about: { x: 0, y: 0 }, turn: radians(1), times: 1, by: { x: 5, y: 7 } };
    const line = 'underlays › underlay:1: expected a picture that is not locked';
    expect(() => placeUnderlay(locked, id, still)).toThrow(line);
    expect(() => straightenUnderlay(locked, id, aslant)).toThrow(line);
    expect(() => tieUnderlay(locked, id, [aslant[0], aslant[1]])).toThrow(line);
    expect(() =>
      scaleUnderlay(locked, id, { from: { x: 0, y: 0 }, to: { x: 9, y: 9 }, length: inches(9) }),
    ).toThrow(line);
    expect(underlayOf(changeUnderlay(locked, id, { shows: 0.5 })).shows).toBe(0.5);
    expect(changeUnderlay(locked, id, { locked: false })).toEqual(one);
    expect(removeUnderlay(locked, id)).toEqual(sampleSite);
    expect(() => changeUnderlay(locked, id, { shows: 1.5 })).toThrow(/shows: expected at most 1/);
    expect(() => removeUnderlay(locked, 'underlay:7')).toThrow(
      'underlays: expected a picture of this site, found "underlay:7"',
    );
  });

  it('[S55] every change shares what it does not touch, and the bytes are never looked at again', () => {
    const kept = keepUnderlay(one, id, bytes);
    const faded = changeUnderlay(kept, id, { shows: 0.25 });
    expect(faded.pictures).toBe(kept.pictures);
    expect(faded.marks).toBe(kept.marks);
    expect(underlayOf(faded).ties).toBe(underlayOf(kept).ties);
    expect(changeUnderlay(faded, id, { shows: 0.25 })).toBe(faded);
  });

  it('[S4] a file in which a picture lies nowhere, or has no id, is refused in one line', () => {
    const open = (change: object) => {
      const bad = { ...one, underlays: { [id]: { ...underlayOf(one), ...change } } };
      return openSite(JSON.stringify(bad));
    };
    const [first, second] = laid.ties;
    const three = { 'tie:1': first, 'tie:2': second, 'tie:3': { u: 9, v: 9, x: 1, y: 1 } };
    expect(open({ ties: three })).toEqual({
      ok: false,
      reason:
        'underlays › underlay:1 › ties: expected points that say where the picture lies, found "3: expected two points or four, found 3"',
    });
    expect(open({ ties: { 'tie:1': first, 'tie:2': { ...second, u: 0, v: 0 } } })).toMatchObject({
      reason: expect.stringContaining('two of the points are on one spot'),
    });
    expect(open({ picture: 'picture:12' })).toEqual({
      ok: false,
      reason:
        'underlays › underlay:1 › picture: expected an id of "picture:" and 64 hex digits, found "picture:12"',
    });
  });

  it('[S56] no picture changes the text that a sheet is of, and none is in it', () => {
    const kept = changeUnderlay(keepUnderlay(one, id, bytes), id, { shows: 0.5 });
    expect(sheetText(kept)).toBe(saveSite(sampleSite));
    expect(sheetText(sampleSite)).toBe(saveSite(sampleSite));
    expect(saveSite(kept)).not.toBe(sheetText(kept));
  });

  it('[S10] whatever edits of pictures follow one another, the file opens again as it is', () => {
    const at = fc.record({
      x: fc.integer({ min: -999, max: 999 }),
      y: fc.integer({ min: -999, max: 999 }),
    });
    const deed = fc.record({ verb: fc.nat(8), n: fc.nat(40), at, to: at });
    type Deed = typeof deed extends fc.Arbitrary<infer T> ? T : never;
    const edited = (site: Site, { verb, n, at: from, to }: Deed): Site => {
      const ids = Object.keys(site.underlays) as (typeof id)[];
      const which = ids[n % (ids.length || 1)] ?? id;
      const seen = { x: from.x / 4, y: from.y / 4 };
      const other = { x: to.x / 4, y: to.y / 4 };
      const length = inches(n * 10);
      const edits: readonly (() => Site)[] = [
        () => addUnderlay(site, { ...laid, label: String(n) }),
        () => removeUnderlay(site, which),
        () => changeUnderlay(site, which, { shows: n / 40, locked: n % 5 === 0 }),
        () => placeUnderlay(site, which, { about: from, turn: radians(n), times: n / 9, by: to }),
        () => scaleUnderlay(site, which, { from: seen, to: other, length }),
        () =>
          straightenUnderlay(
            site,
            which,
            aslant.map((tie, k) => (k === n % 4 ? { ...tie, ...to } : tie)) as unknown as FourTies,
          ),
        () =>
          tieUnderlay(site, which, [aslant[n % 4] ?? aslant[0], { u: seen.x, v: seen.y, ...to }]),
        () => keepUnderlay(site, which, n % 2 === 0 ? bytes : null),
        () =>
          addUnderlay(site, { ...laid, picture: `picture:${String(n % 10).repeat(64)}-p${n + 1}` }),
      ];
      try {
        return edits[verb]?.() ?? site;
      } catch (error) {
        if (error instanceof RangeError) return site;
        throw error;
      }
    };
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 30 }), (deeds) => {
        let site = sampleSite;
        for (const next of deeds) {
          const text = JSON.stringify(site);
          const after = edited(site, next);
          expect(JSON.stringify(site)).toBe(text);
          expect(after.marks).toBe(site.marks);
          site = after;
        }
        expect(openSite(saveSite(site))).toEqual({ ok: true, value: site });
      }),
      { numRuns: 200 },
    );
  });
});
