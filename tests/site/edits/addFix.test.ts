import { expect, it } from 'vitest';
import { addFix } from '../../../src/site/edits/addFix.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { inches } from '../../../src/units/inches.ts';
import { namedSite } from '../../store/namedSite.ts';

const origin = { latitude: 40, longitude: -90 };
const found = { at: { x: 120, y: -60 }, accuracy: inches(80), label: 'Walk 1', origin };

it('[S43] a place found by satellites is a mark with what they found, and places a site that has no place', () => {
  const site = addFix(namedSite('Yard'), found);
  expect(site.marks).toEqual({ 'mark:1': { x: 120, y: -60, label: 'Walk 1', fixed: false } });
  expect(Object.values(site.observations)).toEqual([
    { kind: 'fix', mark: 'mark:1', x: 120, y: -60, accuracy: 80, label: '' },
  ]);
  expect(site.origin).toEqual(origin);
  expect(openDocument(site).ok).toBe(true);
  const next = addFix(site, { ...found, origin: { latitude: 41, longitude: -91 } });
  expect(next.origin).toBe(site.origin);
  expect(Object.keys(next.marks)).toEqual(['mark:1', 'mark:2']);
});

it('[S43] refuses what is too far away or no place, and leaves the site as it was', () => {
  const site = namedSite('Yard');
  expect(() => addFix(site, { ...found, at: { x: 7e5, y: 0 } })).toThrow(/^marks › mark:1 › x/);
  expect(() => addFix(site, { ...found, accuracy: inches(0) })).toThrow(RangeError);
  expect(() => addFix(site, { ...found, origin: { latitude: 95, longitude: 0 } })).toThrow(
    /^origin › latitude/,
  );
  expect(site).toEqual(namedSite('Yard'));
});
