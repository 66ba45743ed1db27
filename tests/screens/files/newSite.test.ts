import { describe, expect, it } from 'vitest';
import { newSite } from '../../../src/screens/files/newSite.ts';
import { usualCounting } from '../../../src/site/counting.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import { inches } from '../../../src/units/inches.ts';

describe('newSite', () => {
  it('counts as the trade does where the company keeps nothing, else as it does', () => {
    const { lineage, ...fresh } = newSite(null);
    const { lineage: none, ...empty } = emptySite({ specs: {}, hardware: {} });
    expect(fresh).toEqual(empty);
    expect(lineage).toEqual({ ...none, job: expect.stringMatching(/^[0-9a-f]{32}$/) });
    expect(newSite(null).lineage.job).not.toBe(lineage.job);
    const counting = { ...usualCounting, roll: inches(1200), times: { bolt: 0 } };
    const site = newSite(counting);
    expect(site).toEqual({ ...fresh, lineage: site.lineage, counting });
    const opened = openSite(saveSite(site));
    expect(opened.ok && opened.value).toEqual(site);
  });
});
