import { inches } from '../../../src/units/inches.ts';
import { describe, expect, it } from 'vitest';
import { mayOpenText } from '../../../src/drawing/tables/mayOpenText.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import type { FeatureFields } from '../../../src/site/feature.ts';
import type { Site } from '../../../src/site/site.ts';
import { firstGate } from '../../engine/plainYard.ts';
import { cantilever, gap, swing, wayYard } from '../../engine/wayYard.ts';

const told = (site: Site): string | null => {
  const layout = layOutSite(site);
  const gate = layout.gates[firstGate(site)];
  if (gate === undefined) throw new Error('no gate');
  return mayOpenText(site, layout, gate);
};

const withGround = (site: Site, fields: FeatureFields, low: number, high: number): Site =>
  addFeature(site, fields, [
    { x: 0, y: low },
    { x: 600, y: low },
    { x: 600, y: high },
    { x: 0, y: high },
  ]);

const facing = (side: 'left' | 'right') => {
  const site = wayYard(swing);
  return setGateOpens(site, firstGate(site), side);
};

describe('mayOpenText', () => {
  const house = { kind: 'building', label: 'House' } as const;

  it('[D54] says either way where nothing stands in it', () => {
    expect(told(facing('left'))).toBe('either way by 90°.');
  });

  // the leaf reaches 44.95 in from its pin, half of it 0.83 in: a wall at 30 in stops it at 40.8°
  it('[D54] names what stops it this way or the other, and where', () => {
    expect(told(withGround(facing('left'), house, 30, 200))).toBe(
      'only the other way by 90°. This way it meets House (building) at 40.8°.',
    );
    expect(told(withGround(facing('right'), house, 30, 200))).toBe(
      'only the way it opens now by 90°. The other way it meets House (building) at 40.8°.',
    );
    const between = withGround(withGround(facing('left'), house, 30, 200), house, -200, -30);
    expect(told(between)).toMatch(
      /^neither way by 90°\. This way it meets .* The other way it meets /,
    );
  });

  it('[D54] says which way it swings out over the boundary', () => {
    const land = { kind: 'boundary', label: '', closed: true, setback: inches(0) } as const;
    expect(told(withGround(facing('left'), land, 0, 300))).toBe(
      'either way by 90°. The other way it swings over the boundary.',
    );
  });

  it('[D54] says nothing of leaves that roll, and of a gap', () => {
    expect(told(wayYard(cantilever))).toBeNull();
    expect(told(wayYard(gap))).toBeNull();
  });
});
