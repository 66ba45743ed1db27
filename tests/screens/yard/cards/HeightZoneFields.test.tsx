import { describe, expect, it } from 'vitest';
import { FeatureCard } from '../../../../src/screens/yard/cards/FeatureCard.tsx';
import { SightKeys } from '../../../../src/screens/yard/cards/SightKeys.tsx';
import { addFeature } from '../../../../src/site/edits/addFeature.ts';
import { inches } from '../../../../src/units/inches.ts';
import { bare } from '../../../engine/plainYard.ts';
import { shown } from '../shown.tsx';

const corners = [
  { x: 0, y: 0 },
  { x: 600, y: 0 },
  { x: 0, y: 144 },
];

const zone = addFeature(
  bare,
  { kind: 'height zone', label: '', of: 'sight triangle', solid: inches(30), open: inches(42) },
  corners,
);

const lot = addFeature(
  bare,
  { kind: 'boundary', label: '', closed: true, setback: inches(0) },
  corners,
);

describe('ground with a height limit on its card', () => {
  it('has both limits, the towns that publish some, and says that the local code decides', () => {
    const card = shown(zone, <FeatureCard id="feature:1" />);
    expect(card).toContain('aria-label="Sight triangle"');
    expect(card).toMatch(
      /Highest, solid fence.*2&#x27;-6&quot;.*Highest, open fence.*3&#x27;-6&quot;/,
    );
    for (const town of ['Zanesville OH', 'Dubuque IA']) expect(card).toContain(town);
    expect(card).toContain('The local code decides');
    expect(card).toContain('Delete sight triangle');
  });

  it('is drawn from a corner of a boundary, which says where a side is too short', () => {
    const keys = shown(lot, <SightKeys id="mark:1" />);
    expect(keys).toContain('One side is 12&#x27;-0&quot; long: the triangle ends there.');
    expect(keys).toContain('Sight triangle here');
    expect(shown(zone, <SightKeys id="mark:1" />)).toBe('');
  });
});
