import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { curveLeg } from '../../../src/site/edits/curveLeg.ts';
import { closeLine } from '../../../src/site/edits/closeLine.ts';
import { extendLine } from '../../../src/site/edits/extendLine.ts';
import { removeLine } from '../../../src/site/edits/removeLine.ts';
import { renameLine } from '../../../src/site/edits/renameLine.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { setHook } from '../../../src/site/edits/setHook.ts';
import { setLegLength } from '../../../src/site/edits/setLegLength.ts';
import { setLineSpec } from '../../../src/site/edits/setLineSpec.ts';
import { startLine } from '../../../src/site/edits/startLine.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import type { GateId, LineId, MarkId } from '../../../src/site/ids.ts';
import { legGround } from '../../../src/site/legGround.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import { verticesOf } from '../../../src/site/pathOrder.ts';
import type { Site } from '../../../src/site/site.ts';
import { sampleSite } from '../sampleSite.ts';
import { after, anyMoves, anyPoint } from './anyEdits.ts';
import { apart, gateOnGround } from './gateOnGround.ts';

const marksOf = (site: Site, id: LineId): MarkId[] =>
  verticesOf(site.lines[id]?.path ?? {}).map((vertex) => vertex.mark);

const at = (site: Site, id: MarkId) => {
  const { x, y } = site.marks[id] ?? { x: Number.NaN, y: Number.NaN };
  return [x, y];
};

describe('drawing a line', () => {
  it('[S7] starts, goes on at both ends and closes', () => {
    let site = startLine(sampleSite, 'spec:1', 'mark:4');
    site = extendLine(site, 'line:3', { x: 900, y: 0 });
    site = extendLine(site, 'line:3', { x: 900, y: 500 });
    site = extendLine(site, 'line:3', 'mark:11', 'start');
    expect(marksOf(site, 'line:3')).toEqual(['mark:11', 'mark:4', 'mark:12', 'mark:13']);
    expect(at(site, 'mark:13')).toEqual([900, 500]);
    expect(site.lines['line:3']).toMatchObject({ spec: 'spec:1', closed: false, hook: 'start' });
    const closed = closeLine(site, 'line:3');
    expect(legsOf(closed.lines['line:3'] ?? { path: {}, closed: false })).toHaveLength(4);
  });

  it('[S9] the mark at its end again changes nothing, nor does closing twice', () => {
    expect(extendLine(sampleSite, 'line:1', 'mark:4')).toBe(sampleSite);
    expect(extendLine(sampleSite, 'line:1', 'mark:1', 'start')).toBe(sampleSite);
    expect(closeLine(sampleSite, 'line:2')).toBe(sampleSite);
    expect(setHook(sampleSite, 'line:1', 'start')).toBe(sampleSite);
    expect(setLineSpec(sampleSite, 'line:1', 'spec:1')).toBe(sampleSite);
    expect(renameLine(sampleSite, 'line:1', 'Back')).toBe(sampleSite);
  });

  it('a line that came back to its first mark closes without the vertex that is there twice', () => {
    const back = extendLine(sampleSite, 'line:1', 'mark:1');
    expect(marksOf(back, 'line:1')).toHaveLength(5);
    const closed = closeLine(back, 'line:1');
    expect(marksOf(closed, 'line:1')).toEqual(['mark:1', 'mark:2', 'mark:3', 'mark:4']);
    expect(closed.lines['line:1']?.closed).toBe(true);
    expect(closed.gates).toBe(sampleSite.gates);
  });

  it('[S7] a line whose keys leave no room gets fresh ones, and its gates stay on their legs', () => {
    const line = sampleSite.lines['line:1'];
    if (line === undefined) throw new Error('no line');
    const path = Object.fromEntries(
      verticesOf(line.path).map(({ id, mark }, n) => [id, { mark, order: `zz${n}` }]),
    );
    const tight = { ...sampleSite, lines: { ...sampleSite.lines, 'line:1': { ...line, path } } };
    const site = extendLine(tight, 'line:1', 'mark:11');
    expect(marksOf(site, 'line:1')).toEqual(['mark:1', 'mark:2', 'mark:3', 'mark:4', 'mark:11']);
    expect(site.gates).toBe(sampleSite.gates);
  });

  it('what is said of a line can be changed', () => {
    const spec = sampleSite.specs['spec:1'];
    if (spec === undefined) throw new Error('no spec');
    const other = addSpec(sampleSite, 'spec:tall', { ...spec, label: 'Tall' });
    expect(setLineSpec(other, 'line:1', 'spec:tall').lines['line:1']?.spec).toBe('spec:tall');
    expect(setHook(sampleSite, 'line:1', 'end').lines['line:1']?.hook).toBe('end');
    expect(renameLine(sampleSite, 'line:1', 'Front').lines['line:1']?.label).toBe('Front');
  });

  it('[S11] what cannot be done is told in one line', () => {
    const throwing: [() => Site, string][] = [
      [
        () => startLine(sampleSite, 'spec:9', { x: 0, y: 0 }),
        'specs: expected a fence spec of this site, found "spec:9"',
      ],
      [
        () => startLine(sampleSite, 'spec:1', 'mark:99'),
        'marks: expected a mark of this site, found "mark:99"',
      ],
      [
        () => extendLine(sampleSite, 'line:9', { x: 0, y: 0 }),
        'lines: expected a fence line of this site, found "line:9"',
      ],
      [
        () => extendLine(sampleSite, 'line:2', { x: 0, y: 0 }),
        'lines: expected an open line, found "line:2"',
      ],
      [
        () => extendLine(sampleSite, 'line:1', { x: 0, y: Number.NaN }),
        'marks › mark:12 › y: expected a number, found NaN',
      ],
      [
        () => closeLine(startLine(sampleSite, 'spec:1', 'mark:1'), 'line:3'),
        'lines › line:3: expected three marks or more to close, found 1',
      ],
      [
        () => setLegLength(sampleSite, 'line:1', 'vertex:4', 10),
        'leg: expected the start of a leg of this line, found "vertex:4"',
      ],
      [
        () => setLegLength(sampleSite, 'line:1', 'vertex:1', 0),
        'lines › line:1 › leg › vertex:1 › length: expected more than 0, found 0',
      ],
      [
        () => setLegLength(sampleSite, 'line:1', 'vertex:1', Number.NaN),
        'lines › line:1 › leg › vertex:1 › length: expected a number, found NaN',
      ],
    ];
    for (const [act, line] of throwing) expect(act).toThrow(new RangeError(line));
  });
});

describe('removing a line', () => {
  it('[S15] its gates go with it, and the marks on which nothing else stands', () => {
    const site = removeLine(sampleSite, 'line:1');
    expect(Object.keys(site.lines)).toEqual(['line:2']);
    expect(Object.keys(site.gates)).toEqual(['gate:2']);
    const gone = Object.keys(sampleSite.marks).filter((id) => !(id in site.marks));
    expect(gone).toEqual(['mark:2', 'mark:3', 'mark:4']);
  });
});

describe('reversing a line', () => {
  const grounded = (site: Site) =>
    Object.fromEntries(
      (Object.keys(site.gates) as GateId[]).map((id) => {
        const gate = site.gates[id];
        return [id, gate === undefined ? null : gateOnGround(site, gate)];
      }),
    );

  it('[S12] leaves line, gates and hook where they are on the ground; twice is as it was', () => {
    fc.assert(
      fc.property(anyMoves, fc.nat(), (moves, pick) => {
        const site = moves.reduce(after, sampleSite);
        const ids = Object.keys(site.lines) as LineId[];
        const id = ids[pick % ids.length];
        if (id === undefined) return;
        const turned = reverseLine(site, id);
        expect(marksOf(turned, id)).toEqual(marksOf(site, id).toReversed());
        expect(turned.lines[id]?.hook).not.toBe(site.lines[id]?.hook);
        expect(apart(grounded(turned), grounded(site))).toBeLessThan(1e-6);
        expect(reverseLine(turned, id)).toEqual(site);
      }),
    );
  });

  it('[S12] tells everything of a gate from the other end', () => {
    const gate = reverseLine(sampleSite, 'line:1').gates['gate:1'];
    expect(gate).toMatchObject({
      leg: 'vertex:3',
      anchor: { from: 'end', offset: 96 },
      opens: 'right',
      hingedAt: 'end',
      leaves: {
        'leaf:1': { order: 'a1', widths: { top: 56.875 } },
        'leaf:2': { order: 'a0', widths: { top: 57 } },
      },
    });
    expect(reverseLine(sampleSite, 'line:2').gates['gate:2']).toMatchObject({
      leg: 'vertex:5',
      anchor: { from: 'middle', offset: -12.5 },
    });
  });
});

describe('giving a leg a length', () => {
  it('[S16] moves what comes after along the leg’s bearing', () => {
    const site = setLegLength(sampleSite, 'line:1', 'vertex:2', 700);
    expect(at(site, 'mark:2')).toEqual([0, -480]);
    expect(at(site, 'mark:3')).toEqual([700, -480]);
    expect(at(site, 'mark:4')).toEqual([700, 0]);
  });

  it('[S40] what a straight leg is said to measure is what the tape reads between its marks', () => {
    const site = setLegLength(sampleSite, 'line:1', 'vertex:2', 720);
    expect(site.marks).toBe(sampleSite.marks);
    expect(Object.values(site.observations)).toEqual([
      { kind: 'tape', from: 'mark:2', to: 'mark:3', length: 720, trust: null, label: '' },
    ]);
    expect(setLegLength(site, 'line:1', 'vertex:2', 720)).toBe(site);
    const bowed = curveLeg(sampleSite, { line: 'line:1', leg: 'vertex:2', bow: 60 });
    expect(setLegLength(bowed, 'line:1', 'vertex:2', 800).observations).toEqual({});
  });

  it('[S16] a house beyond stays where it is, and all that comes after it', () => {
    let site = extendLine(sampleSite, 'line:1', 'mark:6');
    site = extendLine(site, 'line:1', { x: 500, y: 900 });
    const longer = setLegLength(site, 'line:1', 'vertex:2', 800);
    expect(at(longer, 'mark:4')).toEqual([800, 0]);
    expect(at(longer, 'mark:6')).toEqual([400, 300]);
    expect(at(longer, 'mark:12')).toEqual([500, 900]);
  });

  it('[S16] on a closed line only the far mark moves', () => {
    const site = setLegLength(sampleSite, 'line:2', 'vertex:5', 500);
    const moved = Object.keys(sampleSite.marks).filter(
      (id) => site.marks[id as MarkId] !== sampleSite.marks[id as MarkId],
    );
    expect(moved).toEqual(['mark:8']);
    expect(at(site, 'mark:8')).toEqual([1500, 1000]);
  });

  it('[S16] the leg is that long on the same bearing, wherever it lies', () => {
    fc.assert(
      fc.property(
        fc.array(anyPoint, { minLength: 2, maxLength: 8 }),
        fc.nat(),
        fc.integer({ min: 1, max: 640_000 }).map((n) => n / 64),
        (points, pick, length) => {
          const drawn = points.reduce(
            (site, point) => extendLine(site, 'line:3', point),
            startLine(sampleSite, 'spec:1', { x: 1, y: 1 }),
          );
          const line = drawn.lines['line:3'];
          const legs = line === undefined ? [] : legsOf(line);
          const leg = legs[pick % legs.length];
          if (leg === undefined) return;
          const before = legGround(drawn, leg);
          fc.pre(distance(before.start, before.end) > 1);
          const now = legGround(setLegLength(drawn, 'line:3', leg.id, length), leg);
          expect(distance(now.start, now.end)).toBeCloseTo(length, 6);
          expect(at(drawn, leg.start)).toEqual([now.start.x, now.start.y]);
          const turned = Math.atan2(now.end.y - now.start.y, now.end.x - now.start.x);
          const was = Math.atan2(before.end.y - before.start.y, before.end.x - before.start.x);
          expect(Math.cos(turned - was)).toBeCloseTo(1, 9);
        },
      ),
    );
  });
});
