import { describe, expect, it } from 'vitest';
import { acceptable, acceptedAs, acceptedText } from '../../src/engine/acceptedAs.ts';
import type { Flag } from '../../src/engine/flag.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { acceptFlag } from '../../src/site/edits/acceptFlag.ts';
import { setConditions } from '../../src/site/edits/setConditions.ts';
import { withdrawAcceptance } from '../../src/site/edits/withdrawAcceptance.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { bare, fence } from './plainYard.ts';

const frosty = setConditions(
  fence(bare, [
    [0, 0],
    [1200, 0],
  ]),
  { frost: inches(36) },
);

const frostFlag = (site: Site): Flag => {
  const found = layOutSite(site).flags.find(({ rule }) => rule === 'holes above frost');
  if (found === undefined) throw new Error('expected a flag for frost');
  return found;
};

const accepting = (site: Site, flag: Flag, reason = 'Owner’s wish'): Site =>
  acceptFlag(site, { ...acceptable(flag), reason, by: 'AB', day: '2026-03-09' });

describe('accepting a flag', () => {
  it('[F31] holds while the flag says the same, and is told with reason, initials and day', () => {
    const site = accepting(frosty, frostFlag(frosty));
    const accepted = acceptedAs(site, frostFlag(site));
    expect(acceptedText(accepted!.acceptance)).toBe('Accepted by AB, 2026-03-09: Owner’s wish');
    // deeper frost: the flag says another figure
    const worse = setConditions(site, { frost: inches(48) });
    expect(acceptedAs(worse, frostFlag(worse))).toBeNull();
  });

  it('[F31] a second acceptance takes the place of the first, and it can be taken back', () => {
    const once = accepting(frosty, frostFlag(frosty));
    const twice = accepting(once, frostFlag(once), 'Rock at two feet');
    expect(Object.values(twice.acceptances).map(({ reason }) => reason)).toEqual([
      'Rock at two feet',
    ]);
    const { id } = acceptedAs(twice, frostFlag(twice))!;
    expect(withdrawAcceptance(twice, id).acceptances).toEqual({});
    expect(() => withdrawAcceptance(frosty, id)).toThrow(RangeError);
  });

  it('[F31] nobody accepts a stop, nor anything without a reason or initials', () => {
    const flag = frostFlag(frosty);
    const site = accepting(frosty, flag);
    expect(acceptedAs(site, { ...flag, level: 'stop' })).toBeNull();
    const bareWords = { ...acceptable(flag), reason: '', by: 'AB', day: '' };
    expect(() => acceptFlag(frosty, bareWords)).toThrow(/reason/);
    expect(() => acceptFlag(frosty, { ...bareWords, reason: 'x', by: '' })).toThrow(/by/);
  });
});
