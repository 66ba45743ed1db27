import { describe, expect, it } from 'vitest';
import { acceptFlag } from '../../../src/site/edits/acceptFlag.ts';
import { setConditions } from '../../../src/site/edits/setConditions.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

describe('what the place does to a fence', () => {
  it('[S57] is kept in the file, and so is how a flag was accepted', () => {
    const told = setConditions(sampleSite, {
      soil: 'clay',
      frost: inches(30),
      wind: { speed: 110, exposure: 'B' },
    });
    const accepted = acceptFlag(told, {
      rule: 'holes above frost',
      on: 'line line:1',
      said: 'holes 2 ft deep',
      reason: 'Rock',
      by: 'AB',
      day: '2026-03-09',
    });
    expect(openSite(saveSite(accepted))).toEqual({ ok: true, value: accepted });
  });

  it('[S9] telling what was told already gives the very same site', () => {
    expect(setConditions(sampleSite, { frost: null, bays: 'by build' })).toBe(sampleSite);
  });

  it.each([
    [{ wind: { speed: 10, exposure: 'C' as const } }, 'conditions › wind › speed'],
    [{ frost: inches(-1) }, 'conditions › frost'],
  ])('[S11] %j is refused in one line', (fields, place) => {
    expect(() => setConditions(sampleSite, fields)).toThrow(place);
  });
});
