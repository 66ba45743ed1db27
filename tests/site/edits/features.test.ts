import { describe, expect, it } from 'vitest';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { changeFeature } from '../../../src/site/edits/changeFeature.ts';
import { moveFeature } from '../../../src/site/edits/moveFeature.ts';
import { removeFeature } from '../../../src/site/edits/removeFeature.ts';
import type { FeatureFields } from '../../../src/site/feature.ts';
import { brokenReference } from '../../../src/site/references.ts';
import { verticesOf } from '../../../src/site/pathOrder.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

const corners = [{ x: 0, y: 0 }, 'mark:11', { x: 9, y: 8 }, { x: 9, y: 0 }] as const;
const utility = {
  kind: 'utility',
  run: 'buried',
  label: 'Gas',
  service: 'gas',
  width: inches(2),
  tolerance: inches(24),
} as const;

describe('features', () => {
  it.each<FeatureFields>([
    { kind: 'building', label: 'Shed' },
    { kind: 'paving', label: '' },
    { kind: 'pool', label: '' },
    { kind: 'keep-out', label: 'Drain' },
    { kind: 'boundary', label: '', closed: true, setback: inches(0) },
    { kind: 'boundary', label: '', closed: false, setback: inches(0) },
    utility,
  ])('[S8] $kind is added along its marks, old and new', (fields) => {
    const site = addFeature(sampleSite, fields, corners);
    const feature = site.features['feature:3'];
    if (feature === undefined || !('path' in feature)) throw new Error('no path');
    expect(feature).toMatchObject(fields);
    expect(verticesOf(feature.path).map((vertex) => vertex.mark)).toEqual([
      'mark:12',
      'mark:11',
      'mark:13',
      'mark:14',
    ]);
    expect(site.marks['mark:13']).toEqual({ x: 9, y: 8, label: '', fixed: false });
    expect(brokenReference(site)).toBeNull();
  });

  it.each<FeatureFields>([
    { kind: 'tree', label: 'Elm', trunk: inches(8), roots: inches(60) },
    { kind: 'note', label: '', text: 'Dog\nin yard' },
  ])('[S8] $kind is added at one mark', (fields) => {
    const site = addFeature(sampleSite, fields, [{ x: 4, y: 4 }]);
    expect(site.features['feature:3']).toEqual({ ...fields, mark: 'mark:12' });
    expect(() => addFeature(sampleSite, fields, [])).toThrow(
      new RangeError(`features: expected a ${fields.kind} with 1 marks, found 0`),
    );
    expect(() => addFeature(sampleSite, fields, corners)).toThrow(RangeError);
  });

  it('fields of its kind are changed, the rest is shared', () => {
    const site = changeFeature(sampleSite, 'feature:2', { roots: inches(120) });
    expect(site.features['feature:2']).toEqual({
      ...sampleSite.features['feature:2'],
      roots: 120,
    });
    expect(site.features['feature:1']).toBe(sampleSite.features['feature:1']);
    expect(site.marks).toBe(sampleSite.marks);
  });

  it('[S9] what it says already, and no move at all, leave the very same site', () => {
    expect(changeFeature(sampleSite, 'feature:2', { label: 'Oak' })).toBe(sampleSite);
    expect(moveFeature(sampleSite, 'feature:1', { x: 0, y: 0 })).toBe(sampleSite);
  });

  it('a feature moves with its marks, and the fence that stands on one of them', () => {
    const site = moveFeature(sampleSite, 'feature:1', { x: 10, y: -5 });
    expect(site.marks['mark:1']).toMatchObject({ x: 10, y: -5 });
    expect(site.marks['mark:6']).toMatchObject({ x: 410, y: 295 });
    expect(site.marks['mark:2']).toBe(sampleSite.marks['mark:2']);
    const tree = moveFeature(sampleSite, 'feature:2', { x: 1, y: 1 });
    expect(tree.marks['mark:10']).toMatchObject({ x: -199.5, y: 51.25 });
  });

  it('[S15] the marks of a feature go with it, but not one that a fence stands on', () => {
    const site = removeFeature(sampleSite, 'feature:1');
    expect(Object.keys(site.features)).toEqual(['feature:2']);
    expect(Object.keys(sampleSite.marks).filter((id) => !(id in site.marks))).toEqual([
      'mark:5',
      'mark:6',
    ]);
  });

  it('[S11] what cannot be done is told in one line', () => {
    const throwing: [() => Site, string][] = [
      [
        () => addFeature(sampleSite, { kind: 'pool', label: '' }, corners.slice(0, 2)),
        'features: expected a pool with 3 to 20000 marks, found 2',
      ],
      [
        () => addFeature(sampleSite, utility, ['mark:1']),
        'features: expected a utility with 2 to 20000 marks, found 1',
      ],
      [
        () => addFeature(sampleSite, utility, ['mark:1', 'mark:99']),
        'marks: expected a mark of this site, found "mark:99"',
      ],
      [
        () => addFeature(sampleSite, { ...utility, width: inches(-1) }, ['mark:1', 'mark:2']),
        'features › feature:3 › width: expected at least 0, found -1',
      ],
      [
        () => changeFeature(sampleSite, 'feature:1', { roots: inches(1) }),
        'features › feature:1 › roots: expected no such field, found 1',
      ],
      [
        () => removeFeature(sampleSite, 'feature:9'),
        'features: expected a feature of this site, found "feature:9"',
      ],
      [
        () => moveFeature(sampleSite, 'feature:2', { x: Number.NaN, y: 0 }),
        'marks › mark:10 › x: expected a number, found NaN',
      ],
    ];
    for (const [act, line] of throwing) expect(act).toThrow(new RangeError(line));
  });
});
