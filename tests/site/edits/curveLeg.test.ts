import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { trackAt, trackLength } from '../../../src/geometry/track.ts';
import { anchoredAt } from '../../../src/site/anchor.ts';
import { curveLeg } from '../../../src/site/edits/curveLeg.ts';
import { removeVertex } from '../../../src/site/edits/removeVertex.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { splitLeg } from '../../../src/site/edits/splitLeg.ts';
import type { VertexId } from '../../../src/site/ids.ts';
import { legAt } from '../../../src/site/legGround.ts';
import { legTrack } from '../../../src/site/legTrack.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { sampleSite } from '../sampleSite.ts';

const leg = 'vertex:2';
const bend = (bow: number): Site => curveLeg(sampleSite, { line: 'line:1', leg, bow });

const trackOf = (site: Site, id: VertexId) => {
  const line = site.lines['line:1'];
  if (line === undefined) throw new Error('no line');
  return legTrack(site, line, legAt(line, id));
};

const spots = (site: Site) =>
  [...Object.values(site.gates), ...Object.values(site.pins)]
    .filter(({ line }) => line === 'line:1')
    .map((thing) => anchoredAt(thing.anchor, trackOf(site, thing.leg)));

const bows = fc.double({ min: -400, max: 400, noNaN: true }).filter((bow) => Math.abs(bow) > 0.5);

describe('bowing a leg', () => {
  it('[S30] keeps its middle ordinate in the document, and comes back from a file', () => {
    const site = bend(60);
    expect(site.lines['line:1']?.curved).toEqual({ [leg]: 60 });
    expect(openSite(saveSite(site))).toEqual({ ok: true, value: site });
    expect(curveLeg(site, { line: 'line:1', leg, bow: 60 })).toBe(site);
    expect(curveLeg(site, { line: 'line:1', leg, bow: 0 }).lines['line:1']?.curved).toEqual({});
  });

  it('[S11] refuses a bow of more than four chords and a leg that is not there', () => {
    expect(() => bend(1e6)).toThrow(/expected a middle ordinate of at most 4 times the chord/);
    expect(() => bend(NaN)).toThrow(/expected a middle ordinate/);
    expect(() => curveLeg(sampleSite, { line: 'line:1', leg: 'vertex:99', bow: 1 })).toThrow(/leg/);
  });

  it('[S30] turned round it bows to the other side and lies where it lay', () => {
    fc.assert(
      fc.property(bows, fc.double({ min: 0, max: 1, noNaN: true }), (bow, share) => {
        const site = bend(bow);
        const turned = reverseLine(site, 'line:1');
        expect(reverseLine(turned, 'line:1')).toEqual(site);
        const [there, back] = [trackOf(site, leg), trackOf(turned, 'vertex:3')];
        expect(back.bow).toBe(-there.bow);
        const length = trackLength(there);
        const [one, other] = [trackAt(there, share * length), trackAt(back, (1 - share) * length)];
        expect(distance(one, other)).toBeLessThan(1e-6);
        spots(site).forEach((spot, n) => {
          expect(distance(spot, spots(turned)[n] ?? { x: NaN, y: NaN })).toBeLessThan(1e-6);
        });
      }),
    );
  });

  it('[S31] split by a mark on it both parts have its radius; without the mark it is as it was', () => {
    fc.assert(
      fc.property(bows, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (bow, share) => {
        const site = bend(bow);
        const whole = trackOf(site, leg);
        const at = trackAt(whole, share * trackLength(whole));
        const split = splitLeg(site, 'line:1', leg, at);
        const added = Object.keys(split.lines['line:1']?.path ?? {}).find(
          (id) => !(id in (site.lines['line:1']?.path ?? {})),
        ) as VertexId;
        const parts = [trackOf(split, leg), trackOf(split, added)];
        const total = parts.reduce((sum, part) => sum + trackLength(part), 0);
        // a part that no tape can tell from a straight one is drawn straight
        expect(Math.abs(total - trackLength(whole))).toBeLessThan(1e-2);
        spots(site).forEach((spot, n) => {
          expect(distance(spot, spots(split)[n] ?? { x: NaN, y: NaN })).toBeLessThan(0.05);
        });
        const joined = trackOf(removeVertex(split, 'line:1', added), leg);
        if (parts.every((part) => part.bow !== 0)) expect(joined.bow).toBeCloseTo(bow, 4);
      }),
    );
  });

  it('[S31] of a curved and a straight leg removing the mark between makes a straight one', () => {
    const site = removeVertex(bend(60), 'line:1', 'vertex:2');
    expect(site.lines['line:1']?.curved).toEqual({});
  });
});
