import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Flag } from '../../../src/engine/flag.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { changeGate } from '../../../src/site/edits/changeGate.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { setConditions } from '../../../src/site/edits/setConditions.ts';
import { setGuards } from '../../../src/site/edits/setGuards.ts';
import type { Gate } from '../../../src/site/gate.ts';
import type { GateId, LineId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../plainYard.ts';

const corners = (x: number, y: number, wide: number, high: number) => [
  { x, y },
  { x: x + wide, y },
  { x: x + wide, y: y + high },
  { x, y: y + high },
];

/** A yard of which everything is told that flags of structure and places follow from, much of it amiss. */
const drawn = (): Site => {
  const lines = fence(bare, [
    [0, 0],
    [1210, 0],
    [1210, 830],
    [300, 1010],
  ]);
  const id = Object.keys(lines.lines)[0] as LineId;
  const gated = gateOn(
    gateOn(gateOn(lines, 0, { from: 'start', offset: 331 }), 1, { from: 'end', offset: 203 }, 2),
    2,
    { from: 'start', offset: 407 },
  );
  const pooled = addFeature(
    setGuards(gated, id, 'pool'),
    { kind: 'pool', label: 'Pool' },
    corners(420, 210, 400, 290),
  );
  const walled = addFeature(pooled, { kind: 'building', label: 'Shed' }, corners(384, 31, 70, 60));
  const caught = addFeature(walled, { kind: 'building', label: 'Hut' }, corners(300, 12, 20, 60));
  const wired = addFeature(
    caught,
    {
      kind: 'utility',
      label: '',
      service: 'electric',
      run: 'overhead',
      width: inches(24),
      tolerance: inches(18),
    },
    [
      { x: 700, y: -400 },
      { x: 790, y: 1300 },
    ],
  );
  const shot = addShots(
    wired,
    [
      [-900, -900, 0],
      [2100, -850, 70],
      [2050, 1900, 180],
      [-880, 1950, 110],
    ].map(([x = 0, y = 0, z = 0]) => ({ x, y, z: inches(z), label: '' })),
  );
  const built = changeSpec(shot, 'spec:six', {
    mesh: inches(2),
    gapUnder: inches(3),
    barbedWire: { strands: 3, arms: 'upright' },
    middleRail: { label: '1-5/8', od: inches(1.66), wall: inches(0.14) },
    linePost: { label: '1-1/2', od: inches(1.66), wall: inches(0.09), section: 'round' as const },
    gatePost: { label: '2', od: inches(1.9), wall: inches(0.06), section: 'round' as const },
  });
  const windy = setConditions(built, {
    wind: { speed: 140, exposure: 'D' },
    ice: { thickness: 1 / 8, speed: 120 },
    frost: inches(40),
  });
  return (Object.keys(windy.gates) as GateId[]).reduce(
    (site, gate) =>
      changeGate(site, gate, {
        route: 'accessible',
        latchHeight: inches(50),
        threshold: inches(1),
        powered: true,
      }),
    windy,
  );
};

const site = drawn();

type Place = { readonly x: number; readonly y: number };
type Motion = (place: Place) => Place;

const each = <T extends object>(map: Readonly<Record<string, T>>, to: (one: T) => T) =>
  Object.fromEntries(Object.entries(map).map(([id, one]) => [id, to(one)]));

const moved = (motion: Motion): Site => ({
  ...site,
  marks: each(site.marks, (mark) => ({ ...mark, ...motion(mark) })),
  shots: each(site.shots, (shot) => ({ ...shot, ...motion(shot) })),
});

const otherSide = { left: 'right', right: 'left' } as const;

const mirrored = (): Site => {
  const seen = moved(({ x, y }) => ({ x, y: -y }));
  return {
    ...seen,
    gates: each<Gate>(seen.gates, (gate) => ({ ...gate, opens: otherSide[gate.opens] })),
  };
};

/** Post by post the same, whatever each is called, and left or right whichever way one looks. */
const plain = ({ level, rule, place, message }: Flag): string =>
  [level, rule, place.kind, place.kind === 'line' || place.kind === 'gate' ? place.id : '', message]
    .join('|')
    .replaceAll(/\bposts? (?:[A-Z]{1,2}|\d+)\b/g, 'post')
    .replaceAll(/to the (?:left|right)/g, 'to that side');

const said = (so: Site): string[] => layOutSite(so).flags.map(plain).toSorted();

const standing = (so: Site, motion: Motion) =>
  layOutSite(so)
    .flags.map((flag) => ({ says: plain(flag), at: motion(flag.at) }))
    .toSorted((a, b) => (a.says < b.says ? -1 : 1));

const sameSpots = (so: Site, motion: Motion): void => {
  const [was, now] = [standing(site, motion), standing(so, (at) => at)];
  expect(now.map(({ says }) => says)).toEqual(was.map(({ says }) => says));
  now.forEach(({ at, says }, n) => {
    expect(Math.hypot(at.x - was[n]!.at.x, at.y - was[n]!.at.y), says).toBeLessThan(1e-6);
  });
};

describe('flags of a yard of which much is amiss', () => {
  it('[F47] has every kind of them', () => {
    const rules = new Set(layOutSite(site).flags.map(({ rule }) => rule));
    expect([...rules]).toEqual(
      expect.arrayContaining([
        'posts bend in the wind',
        'gate posts bend in the wind',
        'holes above frost',
        'holes shallow for the wind',
        'posts thinner than usual',
        'gate post thinner than the table',
        'rails of a pool barrier',
        'gap under a pool barrier',
        'mesh of a pool barrier',
        'gate opens to the pool',
        'latch of a pool gate',
        'latch out of reach',
        'sill on an accessible route',
        'steep at an accessible gate',
        'no room at the latch',
        'powered leaf near something',
        'barbed wire',
        'line overhead',
      ]),
    );
  });

  it('[F47] say the same, at the same spots, of the yard turned and moved', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
        fc.double({ min: -5000, max: 5000, noNaN: true }),
        fc.double({ min: -5000, max: 5000, noNaN: true }),
        (angle, east, north) => {
          const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
          const motion: Motion = ({ x, y }) => ({
            x: cos * x - sin * y + east,
            y: sin * x + cos * y + north,
          });
          sameSpots(moved(motion), motion);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('[F47] say the same, at the same spots, of the yard in a mirror', () => {
    sameSpots(mirrored(), ({ x, y }) => ({ x, y: -y }));
  });

  it('[F47] say the same of the yard drawn backwards', () => {
    const back = (Object.keys(site.lines) as LineId[]).reduce(reverseLine, site);
    expect(said(back)).toEqual(said(site));
  });
});
