import { describe, expect, it } from 'vitest';
import { openSite } from '../../src/site/openSite.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import { sampleSite } from './sampleSite.ts';
import type { Site } from '../../src/site/site.ts';

const backwards = (value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? Object.fromEntries(
        Object.entries(value)
          .toReversed()
          .map(([key, inner]) => [key, backwards(inner)]),
      )
    : value;

describe('saving a site', () => {
  it('[S1] what was saved opens as it was', () => {
    expect(openSite(saveSite(sampleSite))).toEqual({ ok: true, value: sampleSite });
  });

  it('[S1] the order in which fields came about does not show in the file', () => {
    const other = backwards(sampleSite) as Site;
    expect(JSON.stringify(other)).not.toBe(JSON.stringify(sampleSite));
    expect(saveSite(other)).toBe(saveSite(sampleSite));
  });

  it('[S1] ends with a newline and holds text of any kind', () => {
    const odd = { ...sampleSite, job: { ...sampleSite.job, name: '\u2028"\ud800 é 🪵' } };
    expect(saveSite(odd).endsWith('}\n')).toBe(true);
    expect(openSite(saveSite(odd))).toEqual({ ok: true, value: odd });
  });

  it('[S1] a minus zero in a file is read as zero, so that it comes back the same', () => {
    const opened = openSite(saveSite(sampleSite).replace('"x": 0,', '"x": -0,'));
    expect(opened).toEqual({ ok: true, value: sampleSite });
  });
});
