import { describe, expect, it } from 'vitest';
import type { Flag } from '../../src/engine/flag.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { mended } from '../../src/engine/mend.ts';
import { addFeature } from '../../src/site/edits/addFeature.ts';
import { setConditions } from '../../src/site/edits/setConditions.ts';
import { setGatePost } from '../../src/site/edits/setGatePost.ts';
import { setGuards } from '../../src/site/edits/setGuards.ts';
import type { LineId } from '../../src/site/ids.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from './plainYard.ts';

const straight = fence(bare, [
  [0, 0],
  [1200, 0],
]);
const pool = [
  { x: 400, y: 200 },
  { x: 800, y: 200 },
  { x: 800, y: 500 },
];
const gated = gateOn(straight, 0, { from: 'middle', offset: 0 });
const byPool = setGuards(
  addFeature(gated, { kind: 'pool', label: '' }, pool),
  Object.keys(gated.lines)[0] as LineId,
  'pool',
);

const flagOf = (site: Site, rule: string): Flag | undefined =>
  layOutSite(site).flags.find((flag) => flag.rule === rule);

describe('mending a flag in one step', () => {
  it.each([
    ['holes above frost', setConditions(straight, { frost: inches(36) })],
    [
      'holes shallow for the wind',
      setConditions(straight, { wind: { speed: 100, exposure: 'C' } }),
    ],
    ['posts bend in the wind', setConditions(straight, { wind: { speed: 150, exposure: 'C' } })],
    ['gate opens to the pool', byPool],
    [
      'gate post thinner than the table',
      setGatePost(gated, firstGate(gated), {
        label: 'thin',
        od: inches(2.375),
        wall: inches(0.154),
        section: 'round',
      }),
    ],
  ] as const)('[F35] %s is gone after it', (rule, site) => {
    const mend = flagOf(site, rule)?.mend;
    expect(mend).toBeDefined();
    const after = mended(site, mend!);
    expect(flagOf(after, rule)).toBeUndefined();
    // once more changes nothing
    expect(mended(after, mend!)).toBe(after);
  });
});
