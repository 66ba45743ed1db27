import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/engine/compare/candidatesOf.ts';
import { customerPrices } from '../../../src/engine/compare/customerPrices.ts';
import { namedSites } from '../../../src/engine/compare/namedSites.ts';
import { pricesToCsv } from '../../../src/exporters/csv/pricesToCsv.ts';
import { pricesFromCsv } from '../../../src/importers/csv/pricesFromCsv.ts';
import { addAlternative } from '../../../src/site/edits/addAlternative.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { changeAlternative } from '../../../src/site/edits/changeAlternative.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, spec } from '../plainYard.ts';

const low = addSpec(bare, 'spec:low', { ...spec, fabricHeight: inches(48) });
const yard = changeAlternative(
  addAlternative(
    fence(low, [
      [0, 0],
      [600, 0],
    ]),
    'Low',
  ),
  'alternative:1',
  { instead: { 'spec:six': 'spec:low' } },
);
const candidates = candidatesOf(namedSites(yard));

const priced = (change: (text: string) => string) => {
  const rows = pricesToCsv(candidates.flatMap(({ load }) => load.lines));
  const list = pricesFromCsv(change(rows.replaceAll(',,,,', ',2,USD,,')));
  if (!list.ok) throw new Error(list.reason);
  return customerPrices(candidates, list.value);
};

describe('prices of a yard and of other ways to build it', () => {
  it('[M6] are told together where each has its total', () => {
    const { price, others, missing } = priced((text) => text);
    if (price.kind !== 'told') throw new Error(price.missing.join());
    expect(missing).toEqual([]);
    expect(others).toEqual([{ label: 'Low', total: expect.anything(), plan: 'final' }]);
    // lower fabric is cheaper here, where a post is priced by itself and hours are alike
    expect(others[0]?.total).not.toBe(price.total);
  });

  it('[M6] what one of them lacks leaves all of them out and the plan as it is', () => {
    const { price, others, missing } = priced((text) =>
      text.replace(/tension-bar 48in,.*\r\n/, ''),
    );
    expect(price.kind).toBe('told');
    expect(others).toEqual([]);
    expect(missing).toEqual(['a price for tension-bar 48in (Low)']);
    const none = customerPrices(candidates, null);
    expect(none).toMatchObject({ price: { kind: 'open' }, others: [], missing: ['a price list'] });
  });

  it('[M6] a way that cannot be built yet is told as such', () => {
    const [drawn, other] = candidates;
    if (drawn === undefined || other === undefined) throw new Error('expected two');
    const flag = {
      level: 'stop',
      rule: 'test',
      place: { kind: 'line', id: 'line:1' },
      at: { x: 0, y: 0 },
      message: '',
    } as const;
    const stopped = { ...other, layout: { ...other.layout, flags: [flag] } };
    const rows = pricesToCsv(candidates.flatMap(({ load }) => load.lines));
    const list = pricesFromCsv(rows.replaceAll(',,,,', ',2,USD,,'));
    if (!list.ok) throw new Error(list.reason);
    const { others } = customerPrices([drawn, stopped], list.value);
    expect(others.map(({ plan }) => plan)).toEqual(['open']);
  });
});
