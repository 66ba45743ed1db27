import { describe, expect, it } from 'vitest';
import { misfitText } from '../../../src/engine/checks/misfitText.ts';
import { newMisfit } from '../../../src/engine/checks/newMisfit.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { changeHardware } from '../../../src/site/edits/changeHardware.ts';
import { setGateLatch } from '../../../src/site/edits/setGateLatch.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { firstGate } from '../plainYard.ts';
import { gateOf, leafIds, partOf } from '../set/setYard.ts';

const posts = (od: number) => ({
  fits: { post: { low: inches(od), high: inches(od) }, frame: null },
});

/** The gate posts of the plain yard are of 2.875 in. */
const site = gateOf([44], {
  hinge: partOf('hinge', [2, 2, 2], posts(2.875)),
  latch: partOf('latch', [2, 2, 2.25], posts(2.875)),
  spare: {
    'hardware:wide': partOf('hinge', [2, 2, 2], { label: 'Wide hinge', ...posts(4) }),
    'hardware:wide-fork': partOf('latch', [2, 2, 2.25], { label: 'Wide fork', ...posts(4) }),
  },
});
const gate = firstGate(site);
const [leaf = 'leaf:'] = leafIds(site);

const told = (before: Site, after: Site): string | null => {
  const layout = layOutSite(before);
  const laid = layout.gates[gate];
  if (laid === undefined) throw new Error('no gate');
  const row = newMisfit(layout, laid, { before, after });
  return row === null ? null : misfitText(row, site.lengths);
};

describe('a part that is put in the place of another', () => {
  const wide = setGateLeaf(site, gate, leaf, { hinge: 'hardware:wide' });

  it('[F11] is told when it is made for other posts', () => {
    expect(told(site, wide)).toBe(
      'hinge “Wide hinge” fits posts of 4.000" OD: the hinge post is 2.875"',
    );
    expect(told(site, setGateLatch(site, gate, 'hardware:wide-fork'))).toBe(
      'latch “Wide fork” fits posts of 4.000" OD: the latch post is 2.875"',
    );
  });

  it('[F11] is not told where it fits, or where nobody has said what it is made for', () => {
    expect(told(wide, site)).toBeNull();
    const bare = { fits: { post: null, frame: null } };
    expect(told(site, changeHardware(site, 'hardware:hinge', bare))).toBeNull();
  });

  it('[F11] a misfit that stood before does not stand in the way of another change', () => {
    expect(told(wide, setGateLeaf(wide, gate, leaf, { height: inches(48) }))).toBeNull();
    expect(told(wide, setGateLatch(wide, gate, 'hardware:wide-fork'))).toContain('Wide fork');
  });
});
