import { describe, expect, it } from 'vitest';
import { newSite } from '../../../src/screens/files/newSite.ts';
import { usualCounting } from '../../../src/site/counting.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import { inches } from '../../../src/units/inches.ts';

describe('newSite', () => {
  it('counts as the trade does where the company keeps nothing, else as it does', () => {
    expect(newSite(null)).toEqual(emptySite({ specs: {}, hardware: {} }));
    const counting = { ...usualCounting, roll: inches(1200), times: { bolt: 0 } };
    const site = newSite(counting);
    expect(site).toEqual({ ...newSite(null), counting });
    const opened = openSite(saveSite(site));
    expect(opened.ok && opened.value).toEqual(site);
  });
});
