import { expect, it } from 'vitest';
import { emptySite } from '../../src/site/emptySite.ts';
import { openSite } from '../../src/site/openSite.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import { sampleSite } from './sampleSite.ts';

it('[S1] an empty site carries the specs and hardware it was given, and opens again', () => {
  const site = emptySite(sampleSite);
  expect(site.specs).toBe(sampleSite.specs);
  expect(site.hardware).toBe(sampleSite.hardware);
  expect(site.lengths).toEqual({ system: 'feet', fraction: 8 });
  expect([site.marks, site.lines, site.gates, site.features]).toEqual([{}, {}, {}, {}]);
  expect(openSite(saveSite(site))).toEqual({ ok: true, value: site });
});
