import { describe, expect, it } from 'vitest';
import { usualSpec } from '../../../src/engine/usualSpec.ts';
import { offeredFences } from '../../../src/screens/plans/offeredFences.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, spec } from '../../engine/plainYard.ts';

describe('the builds that are offered', () => {
  it('are those of the site, then those of the tables that it lacks', () => {
    const four = usualSpec(inches(48));
    const ids = (site = bare) => offeredFences(site).map(({ id }) => id);
    expect(ids()[0]).toBe('spec:six');
    expect(ids()).toContain(four.id);
    const own = addSpec(bare, four.id, spec);
    expect(ids(own).filter((id) => id === four.id)).toHaveLength(1);
    expect(offeredFences(own).find(({ id }) => id === four.id)?.spec).toEqual(spec);
  });
});
