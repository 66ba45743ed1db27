import { describe, expect, it } from 'vitest';
import { addAlternative } from '../../src/site/edits/addAlternative.ts';
import { addSpec } from '../../src/site/edits/addSpec.ts';
import { changeAlternative } from '../../src/site/edits/changeAlternative.ts';
import { rememberCandidates } from '../../src/store/rememberCandidates.ts';
import { inches } from '../../src/units/inches.ts';
import { bare, fence, spec } from '../engine/plainYard.ts';

describe('candidates of a site', () => {
  it('[M15] are worked out once, and after an edit only where it changed them', () => {
    const low = addSpec(bare, 'spec:low', { ...spec, fabricHeight: inches(48) });
    const site = addAlternative(
      fence(low, [
        [0, 0],
        [600, 0],
      ]),
      'Low',
    );
    const candidates = rememberCandidates();
    const [drawn, same] = candidates(site);
    expect(candidates(site)[0]).toBe(drawn);
    expect(same?.layout).toBe(drawn?.layout);
    const instead = { 'spec:six': 'spec:low' } as const;
    const [still, other] = candidates(changeAlternative(site, 'alternative:1', { instead }));
    expect(still?.layout).toBe(drawn?.layout);
    expect(other?.layout).not.toBe(drawn?.layout);
  });
});
