import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import { setGatePost } from '../../../src/site/edits/setGatePost.ts';
import type { LeafId } from '../../../src/site/ids.ts';
import { oneWidth } from '../../../src/site/oneWidth.ts';
import { roundPost } from '../../../src/site/roundPost.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { cantilever, wayYard } from '../wayYard.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

const yard = gateOn(
  fence(bare, [
    [0, 0],
    [2400, 0],
  ]),
  0,
  { from: 'middle', offset: 0 },
);
const pipe = (od: number) => ({ label: `${od}`, od: inches(od), wall: inches(0.14) });
const post = (od: number) => roundPost(pipe(od));

const said = (site: Site) =>
  layOutSite(site).flags.flatMap(({ level, rule, message }) =>
    /thinner|wider than the table/.test(rule) ? [[`${level} ${rule}`, message] as const] : [],
  );

describe('posts by the tables', () => {
  it('[F36] posts as the tables have them say nothing', () => {
    // Byesville OH: 1.9 and 2.375 at 6 ft; MIL-HDBK-1013/10 Table 1: 2.875 up to 6 ft of leaf
    expect(said(yard)).toEqual([]);
  });

  it('[F36] thinner ones are told once a build and once a leaf, with what the table has', () => {
    const thin = changeSpec(yard, 'spec:six', { linePost: post(1.66) });
    expect(said(thin)).toEqual([
      [
        'caution posts thinner than usual',
        expect.stringMatching(/line posts 1\.66.* outside, there 1\.9.*Byesville/),
      ],
    ]);
    const gate = setGatePost(yard, firstGate(yard), post(2.375));
    expect(said(gate)).toEqual([
      [
        'caution gate post thinner than the table',
        expect.stringMatching(/2\.375.* carries a leaf of 3'-8", for which the table has 2\.875/),
      ],
    ]);
  });

  it('[F36] frames and roller posts that are thinner are told once, with what the table has', () => {
    const id = firstGate(yard);
    const [leaf] = Object.keys(yard.gates[id]!.leaves) as LeafId[];
    const light = setGateLeaf(yard, id, leaf!, { frame: pipe(1.315) });
    // ASTM F900, from memory: 1.660 up to 8 ft wide and 6 ft high
    expect(said(light)).toEqual([
      [
        'caution frame thinner than the table',
        expect.stringMatching(/a leaf of 3'-8" has a frame 1\.315.* the table has 1\.66/),
      ],
    ]);
    const rolls = wayYard(cantilever);
    expect(said(rolls)).toEqual([]);
    const thin = setGatePost(rolls, firstGate(rolls), post(2.875));
    expect(said(thin)).toEqual([
      [
        'caution roller post thinner than the table',
        expect.stringMatching(/roller post R1 is 2\.875.*: the table has 4\.000/),
      ],
    ]);
  });

  it('[F36] a leaf of over 24 ft has no row', () => {
    const id = firstGate(yard);
    const [leaf] = Object.keys(yard.gates[id]!.leaves) as LeafId[];
    const wide = setGateLeaf(yard, id, leaf!, { widths: oneWidth(inches(300)) });
    expect(said(wide).map(([what]) => what)).toEqual(['settle leaf wider than the table']);
  });
});
