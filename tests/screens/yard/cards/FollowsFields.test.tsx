import { describe, expect, it } from 'vitest';
import { BoundaryFields } from '../../../../src/screens/yard/cards/BoundaryFields.tsx';
import { FollowsFields } from '../../../../src/screens/yard/cards/FollowsFields.tsx';
import { followBoundary } from '../../../../src/site/edits/followBoundary.ts';
import type { FeatureId, LineId } from '../../../../src/site/ids.ts';
import type { Site } from '../../../../src/site/site.ts';
import { yard } from '../../../editor/yard.ts';
import { shown } from '../shown.tsx';

const [id, lot] = Object.entries(yard.features).find(([, { kind }]) => kind === 'boundary') ?? [];
const boundary = id as FeatureId;

const along = (site: Site): string => {
  const [line] = (Object.keys(site.lines) as LineId[]).filter((name) => site.lines[name]?.follows);
  return shown(site, <FollowsFields id={line ?? 'line:none'} />);
};

describe('FollowsFields', () => {
  it('shows how far inside which boundary a line is, and nothing for a line by itself', () => {
    const followed = followBoundary(yard, boundary, 'spec:invented', 8);
    expect(along(followed)).toMatch(/Inside Lot by.*value="8&quot;".*Follow it no more/);
    expect(along(yard)).toBe('');
  });
});

describe('BoundaryFields', () => {
  it('tells inside from left by whether the boundary closes', () => {
    if (lot?.kind !== 'boundary') throw new Error('expected a boundary');
    const open = shown(yard, <BoundaryFields id={boundary} feature={lot} />);
    expect(open).toMatch(/Setback that local rules ask for.*Fence so far to the left/);
    const closed = shown(yard, <BoundaryFields id={boundary} feature={{ ...lot, closed: true }} />);
    expect(closed).toContain('Fence so far inside');
  });
});
