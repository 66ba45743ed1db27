import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { lerp } from '../../../src/geometry/lerp.ts';
import { extendLine } from '../../../src/site/edits/extendLine.ts';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import { removeVertex } from '../../../src/site/edits/removeVertex.ts';
import { splitLeg } from '../../../src/site/edits/splitLeg.ts';
import { startLine } from '../../../src/site/edits/startLine.ts';
import type { GateId, LineId, VertexId } from '../../../src/site/ids.ts';
import { legAt, legGround } from '../../../src/site/legGround.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import { nextId } from '../../../src/site/nextId.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';
import { after, anyMoves, verbs } from './anyEdits.ts';
import { apart, gateOnGround } from './gateOnGround.ts';

const gatesOn = (site: Site, line: LineId): GateId[] =>
  (Object.keys(site.gates) as GateId[]).filter((id) => site.gates[id]?.line === line);

const grounded = (site: Site, line: LineId) =>
  gatesOn(site, line).map((id) => {
    const gate = site.gates[id];
    return gate === undefined ? null : gateOnGround(site, gate);
  });

/** A straight leg of some line that is a foot long at least, picked by a number. */
const legOf = (site: Site, pick: number) => {
  const legs = (Object.keys(site.lines) as LineId[]).flatMap((line) =>
    legsOf(site.lines[line] ?? { path: {}, closed: false }).map((leg) => ({ line, leg })),
  );
  const long = legs.filter(({ line, leg }) => {
    if (site.lines[line]?.curved[leg.id] !== undefined) return false;
    const ground = legGround(site, leg);
    return distance(ground.start, ground.end) > 12;
  });
  return long[pick % long.length];
};

const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

describe('splitting a leg', () => {
  it('[S13] keeps gates on the ground; the vertex taken out again gives the same gates', () => {
    fc.assert(
      fc.property(anyMoves, fc.nat(), share, (moves, pick, along) => {
        const site = moves.reduce(after, sampleSite);
        const found = legOf(site, pick);
        if (found === undefined) return;
        const { line, leg } = found;
        const ground = legGround(site, leg);
        const vertex = nextId(site, 'vertex');
        const split = splitLeg(site, line, leg.id, lerp(ground.start, ground.end, along));
        expect(apart(grounded(split, line), grounded(site, line))).toBeLessThan(1e-6);
        const joined = removeVertex(split, line, vertex);
        expect(joined.lines).toEqual(site.lines);
        expect(joined.marks).toEqual(site.marks);
        expect(apart(grounded(joined, line), grounded(site, line))).toBeLessThan(1e-6);
        expect(apart(joined.gates, site.gates)).toBeLessThan(1e-6);
      }),
    );
  });

  it('[S13] a gate goes with the half that it stands on, a tape reading of 1/64 in exact', () => {
    const before = splitLeg(sampleSite, 'line:1', 'vertex:2', { x: 95, y: -480 });
    expect(before.gates['gate:1']).toMatchObject({
      leg: 'vertex:11',
      anchor: { from: 'start', offset: 1 },
    });
    const beyond = splitLeg(sampleSite, 'line:1', 'vertex:2', { x: 300, y: -480 });
    expect(beyond.gates).toBe(sampleSite.gates);
    const there = splitLeg(sampleSite, 'line:1', 'vertex:2', { x: 96, y: -480 });
    expect(there.gates['gate:1']).toMatchObject({ leg: 'vertex:11', anchor: { offset: 0 } });
    const end = moveGate(sampleSite, 'gate:1', { from: 'end', offset: inches(96) });
    const ended = splitLeg(end, 'line:1', 'vertex:2', { x: 624, y: -480 });
    expect(ended.gates['gate:1']).toMatchObject({ leg: 'vertex:2', anchor: { offset: 0 } });
  });

  it('[S13] off the leg, a gate goes square to the half that is nearer', () => {
    const bent = splitLeg(sampleSite, 'line:1', 'vertex:2', { x: 360, y: -840 });
    const gate = bent.gates['gate:1'];
    expect(gate?.leg).toBe('vertex:2');
    // the first half runs at 45 degrees, so 96 in becomes 96 × cos 45°
    expect(gate?.anchor.offset).toBeCloseTo(96 * Math.SQRT1_2, 9);
  });

  it('[S9] a mark at an end of the leg changes nothing', () => {
    expect(splitLeg(sampleSite, 'line:1', 'vertex:2', 'mark:2')).toBe(sampleSite);
    expect(splitLeg(sampleSite, 'line:1', 'vertex:2', 'mark:3')).toBe(sampleSite);
  });

  it('[S8] a mark that is there already is used', () => {
    const site = splitLeg(sampleSite, 'line:1', 'vertex:1', 'mark:11');
    expect(site.marks).toBe(sampleSite.marks);
    expect(site.lines['line:1']?.path['vertex:11']?.mark).toBe('mark:11');
  });

  it('[S7] one leg can be split without end', () => {
    let site = startLine(sampleSite, 'spec:1', { x: 0, y: 0 });
    site = extendLine(site, 'line:3', { x: 10_000, y: 0 });
    const first = Object.keys(site.lines['line:3']?.path ?? {})[0] as VertexId;
    for (let n = 1; n <= 400; n += 1) {
      site = splitLeg(site, 'line:3', first, { x: 10_000 - 10 * n, y: 0 });
    }
    const line = site.lines['line:3'];
    const xs = line === undefined ? [] : legsOf(line).map((leg) => site.marks[leg.start]?.x ?? 0);
    expect(xs).toHaveLength(401);
    expect(xs.toSorted((a, b) => a - b)).toEqual(xs);
  });

  it('[S11] what cannot be done is told in one line', () => {
    expect(() => splitLeg(sampleSite, 'line:1', 'vertex:4', { x: 0, y: 0 })).toThrow(
      new RangeError('leg: expected the start of a leg of this line, found "vertex:4"'),
    );
    expect(() => removeVertex(sampleSite, 'line:1', 'vertex:7')).toThrow(
      new RangeError('lines › line:1 › path: expected a vertex of it, found "vertex:7"'),
    );
  });
});

describe('taking a vertex out', () => {
  it('[S14] keeps every gate while the line has a leg', () => {
    fc.assert(
      fc.property(anyMoves, fc.nat(), fc.nat(), (moves, pick, other) => {
        const site = moves.reduce(after, sampleSite);
        const next = after(site, { verb: 'removeVertex', pick, other, at: { x: 0, y: 0 } });
        const lost = (Object.keys(site.gates) as GateId[]).filter((id) => !(id in next.gates));
        for (const id of lost) {
          const line = next.lines[site.gates[id]?.line ?? 'line:1'];
          expect(line === undefined ? [] : legsOf(line)).toEqual([]);
        }
      }),
    );
    expect(verbs).toHaveProperty('removeVertex');
  });

  it('[S14] a gate past an end goes to the leg that is the last now, at its nearer end', () => {
    const last = moveGate(
      sampleSite,
      'gate:1',
      { from: 'start', offset: inches(60) },
      { leg: 'vertex:3' },
    );
    const shorter = removeVertex(last, 'line:1', 'vertex:4');
    expect(shorter.gates['gate:1']).toMatchObject({
      leg: 'vertex:2',
      anchor: { from: 'start', offset: 720 },
    });
    const first = removeVertex(
      moveGate(sampleSite, 'gate:1', { from: 'end', offset: inches(60) }, { leg: 'vertex:1' }),
      'line:1',
      'vertex:1',
    );
    expect(first.gates['gate:1']).toMatchObject({
      leg: 'vertex:2',
      anchor: { from: 'end', offset: 720 },
    });
  });

  it('[S14] a gate stays at its place, square to the joined leg', () => {
    const site = removeVertex(sampleSite, 'line:1', 'vertex:3');
    const line = site.lines['line:1'];
    const gate = site.gates['gate:1'];
    if (line === undefined || gate === undefined) throw new Error('lost');
    expect(gate.leg).toBe('vertex:2');
    const ground = legGround(site, legAt(line, 'vertex:2'));
    // from (0,-480) to (720,0): the place (96,-480) lies 96 × cos of the leg's bearing along it
    expect(gate.anchor.offset).toBeCloseTo((96 * 720) / distance(ground.start, ground.end), 9);
  });

  it('[S15] its mark goes if nothing else stands on it', () => {
    expect('mark:3' in removeVertex(sampleSite, 'line:1', 'vertex:3').marks).toBe(false);
    expect('mark:1' in removeVertex(sampleSite, 'line:1', 'vertex:1').marks).toBe(true);
  });

  it('[S14] a triangle opens to one leg and keeps its gate in place, told from its start', () => {
    for (const gone of ['vertex:5', 'vertex:6', 'vertex:7'] as const) {
      const site = removeVertex(sampleSite, 'line:2', gone);
      expect(site.lines['line:2']?.closed).toBe(false);
      const gate = site.gates['gate:2'];
      if (gate === undefined) throw new Error('lost');
      const old = sampleSite.gates['gate:2'];
      if (old === undefined) throw new Error('no gate');
      const [now, was] = [gateOnGround(site, gate), gateOnGround(sampleSite, old)];
      // its leg is still there only when the vertex between is taken out
      if (gone === 'vertex:6') expect(apart(now, was)).toBeLessThan(1e-9);
      else expect(distance(now.spot, was.spot)).toBeLessThan(500);
    }
  });

  it('[S14] gates go with the last leg, the line with the last vertex', () => {
    let site = removeVertex(removeVertex(sampleSite, 'line:1', 'vertex:4'), 'line:1', 'vertex:3');
    expect(gatesOn(site, 'line:1')).toEqual(['gate:1']);
    site = removeVertex(site, 'line:1', 'vertex:2');
    expect(gatesOn(site, 'line:1')).toEqual([]);
    expect(Object.keys(site.lines['line:1']?.path ?? {})).toEqual(['vertex:1']);
    site = removeVertex(site, 'line:1', 'vertex:1');
    expect(site.lines['line:1']).toBeUndefined();
  });
});
