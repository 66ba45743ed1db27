import { describe, expect, it } from 'vitest';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { extendLine } from '../../../src/site/edits/extendLine.ts';
import { joinMarks } from '../../../src/site/edits/joinMarks.ts';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import { startLine } from '../../../src/site/edits/startLine.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { verticesOf } from '../../../src/site/pathOrder.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

const marksAlong = (site: Site, id: 'line:1' | 'line:2' | 'line:3') =>
  verticesOf(site.lines[id]?.path ?? {}).map(({ mark }) => mark);

describe('joining marks', () => {
  it('[S19] what stood on the one stands on the other, at its place', () => {
    const site = joinMarks(sampleSite, 'mark:4', 'mark:7');
    expect(marksAlong(site, 'line:1')).toEqual(['mark:1', 'mark:2', 'mark:3', 'mark:7']);
    expect(marksAlong(site, 'line:2')).toEqual(['mark:7', 'mark:8', 'mark:9']);
    expect(site.marks['mark:7']).toEqual({ x: 1000, y: 1000, label: '', fixed: false });
    expect('mark:4' in site.marks).toBe(false);
    expect(openDocument(site).ok).toBe(true);
  });

  it('[S19] a name is kept where the other has none', () => {
    const named = joinMarks(sampleSite, 'mark:11', 'mark:4');
    expect(named.marks['mark:4']).toEqual({ x: 720, y: 0, label: 'pin', fixed: false });
    expect(joinMarks(sampleSite, 'mark:11', 'mark:1').marks['mark:1']?.label).toBe('house corner');
  });

  it('[S19] trees and corners of houses go along', () => {
    const site = joinMarks(joinMarks(sampleSite, 'mark:10', 'mark:11'), 'mark:1', 'mark:4');
    expect(site.features['feature:2']).toMatchObject({ mark: 'mark:11' });
    expect(site.features['feature:1']).toMatchObject({ path: { 'vertex:8': { mark: 'mark:4' } } });
  });

  it('[S14] a leg between the two goes, its gate to the leg that is there now', () => {
    const site = joinMarks(sampleSite, 'mark:2', 'mark:3');
    expect(marksAlong(site, 'line:1')).toEqual(['mark:1', 'mark:3', 'mark:4']);
    expect(Object.keys(site.gates).toSorted()).toEqual(['gate:1', 'gate:2']);
    expect(openDocument(site).ok).toBe(true);
    const last = moveGate(
      sampleSite,
      'gate:1',
      { from: 'start', offset: inches(9) },
      { leg: 'vertex:3' },
    );
    const shorter = joinMarks(last, 'mark:4', 'mark:3');
    expect(shorter.gates['gate:1']?.leg).toBe('vertex:2');
  });

  it('[S19] an open line or boundary whose ends are joined is closed', () => {
    const ring = joinMarks(sampleSite, 'mark:4', 'mark:1');
    expect(ring.lines['line:1']?.closed).toBe(true);
    expect(marksAlong(ring, 'line:1')).toEqual(['mark:1', 'mark:2', 'mark:3']);
    const lot = addFeature(
      sampleSite,
      { kind: 'boundary', label: '', closed: false, setback: inches(0) },
      [
        { x: 0, y: 0 },
        { x: 900, y: 0 },
        { x: 900, y: 900 },
        { x: 0, y: 900 },
      ],
    );
    const [first, , , last] = verticesOf(
      (lot.features['feature:3'] as { path: Parameters<typeof verticesOf>[0] }).path,
    );
    if (first === undefined || last === undefined) throw new Error('expected a boundary');
    const closed = joinMarks(lot, last.mark, first.mark).features['feature:3'];
    expect(closed).toMatchObject({ closed: true });
    expect(closed !== undefined && 'path' in closed && Object.keys(closed.path)).toHaveLength(3);
  });

  it('[S19] a triangle of which two marks are joined opens to one leg', () => {
    const site = joinMarks(sampleSite, 'mark:9', 'mark:8');
    expect(site.lines['line:2']?.closed).toBe(false);
    expect(marksAlong(site, 'line:2')).toEqual(['mark:7', 'mark:8']);
    expect('gate:2' in site.gates).toBe(true);
  });

  it('[S11] [S19] what would leave no line and no ground is refused in one line', () => {
    const leg = extendLine(startLine(sampleSite, 'spec:1', 'mark:10'), 'line:3', 'mark:11');
    expect(() => joinMarks(leg, 'mark:10', 'mark:11')).toThrow(
      new RangeError('These marks are the two ends of one leg: expected ends that can meet'),
    );
    expect(() => joinMarks(sampleSite, 'mark:5', 'mark:6')).toThrow(
      new RangeError('A building needs 3 marks: expected one to spare, found 3'),
    );
    expect(joinMarks(sampleSite, 'mark:5', 'mark:5')).toBe(sampleSite);
  });
});
