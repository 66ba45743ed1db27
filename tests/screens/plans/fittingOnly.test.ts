import { expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { fittingOnly } from '../../../src/screens/plans/fittingOnly.ts';
import { addHardware } from '../../../src/site/edits/addHardware.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import type { LeafId } from '../../../src/site/ids.ts';
import { inches } from '../../../src/units/inches.ts';
import { walk, yard } from '../../drawing/orders/signedYard.ts';
import { inventedHinge } from '../../store/invented.ts';

const layout = layOutSite(yard);
const [leaf = 'leaf:'] = Object.keys(yard.gates[walk]?.leaves ?? {}) as LeafId[];

const hungOn = (od: number) => {
  const post = { low: inches(od), high: inches(od) };
  const band = { ...inventedHinge('Band hinge'), fits: { post, frame: null } };
  const stocked = addHardware(yard, 'hardware:band', band);
  const after = setGateLeaf(stocked, walk, leaf, { hinge: 'hardware:band' });
  const laid = layout.gates[walk];
  if (laid === undefined) throw new Error('the gate is not laid out');
  return { after, kept: () => fittingOnly(layout, laid, { before: yard, after }) };
};

it('takes a hinge for the posts that stand there and refuses one for others in one line', () => {
  const { after, kept } = hungOn(2.875);
  expect(kept()).toBe(after);
  expect(hungOn(4).kept).toThrow(
    new RangeError(
      'Hinge “Band hinge” fits posts of 4.000" OD: the hinge post is 2.875", expected a hinge that fits it',
    ),
  );
});
