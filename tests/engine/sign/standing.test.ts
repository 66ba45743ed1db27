import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { restedCheck } from '../../../src/engine/sign/restedCheck.ts';
import { restsOn, type Rested } from '../../../src/engine/sign/restsOn.ts';
import { standingOf } from '../../../src/engine/sign/standing.ts';
import { changeHardware } from '../../../src/site/edits/changeHardware.ts';
import { moveMarks } from '../../../src/site/edits/moveMarks.ts';
import { renameGate } from '../../../src/site/edits/renameGate.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import { setGatePost } from '../../../src/site/edits/setGatePost.ts';
import { signGate } from '../../../src/site/edits/signGate.ts';
import type { LeafId, LineId, MarkId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

const drawn = gateOn(
  fence(bare, [
    [0, 0],
    [600, 0],
  ]),
  0,
  { from: 'start', offset: 120 },
  2,
);
const id = firstGate(drawn);

const rested = (site: Site): Rested => {
  const layout = layOutSite(site);
  const laid = layout.gates[id];
  if (laid === undefined) throw new Error('the gate is not laid out');
  return restsOn(site, layout, laid);
};

const signed = signGate(drawn, id, {
  by: 'AB',
  on: '2026-11-25',
  check: restedCheck(rested(drawn)),
  rested: rested(drawn),
});
const standing = (site: Site) => {
  const gate = site.gates[id];
  if (gate === undefined) throw new Error('the gate is gone');
  return standingOf(gate, rested(site));
};
const changes = (site: Site) => {
  const now = standing(site);
  return now.kind === 'void' ? now.changes : [];
};

describe('signing an opening off', () => {
  it('[O8] an opening is unsigned until somebody signs it', () => {
    expect(standing(drawn)).toEqual({ kind: 'unsigned' });
    expect(standing(signed)).toMatchObject({ kind: 'signed', signOff: { by: 'AB' } });
  });

  it('[O8] a new name, another place and the other end of the line leave it signed', () => {
    const line = Object.keys(signed.lines)[0] as LineId;
    const marks = Object.keys(signed.marks) as MarkId[];
    const same = [
      renameGate(signed, id, 'Another name'),
      moveMarks(signed, marks, { x: 17, y: -300 }),
      reverseLine(signed, line),
    ];
    for (const site of same) expect(standing(site).kind).toBe('signed');
    expect(restedCheck(rested(reverseLine(drawn, line)))).toBe(restedCheck(rested(drawn)));
  });

  it('[O9] a hinge that takes more voids it, and says which term moved by how much', () => {
    const takes = { low: inches(1.875), planned: inches(2), high: inches(2) };
    const swapped = changeHardware(signed, 'hardware:hinge', { takes });
    expect(standing(swapped).kind).toBe('void');
    expect(changes(swapped)).toContainEqual({ what: 'opening to hold', from: 120, to: 120.25 });
    expect(changes(swapped).map(({ what }) => what.replace(/leaf:\d+/, 'leaf'))).toEqual([
      'opening to hold',
      'leaf, hinge, planned',
      'leaf, hinge, high',
      'leaf, hinge, planned',
      'leaf, hinge, high',
    ]);
  });

  it('[O9] so does each other thing that the opening depends on', () => {
    const leaf = Object.keys(signed.gates[id]?.leaves ?? {})[0] as LeafId;
    const post = { label: '4', od: inches(4), wall: inches(0.226), section: 'round' as const };
    const bottom = { top: inches(56.875), middle: null, bottom: inches(56.5) };
    const changed: [Site, string][] = [
      [setGateLeaf(signed, id, leaf, { widths: bottom }), `${leaf}, width at the bottom`],
      [setGateLeaf(signed, id, leaf, { from: 'copied' }), `${leaf}, width known from`],
      [setGatePost(signed, id, post), `${leaf}, post OD`],
      [setGateOpens(signed, id, 'right'), `${leaf}, opens to`],
      [changeHardware(signed, 'hardware:rod', { from: 'assumed' }), 'latch, known from'],
    ];
    for (const [site, what] of changed) {
      expect(changes(site).map((change) => change.what)).toContain(what);
    }
  });

  it('[O9] taking a change back makes the sign-off good again', () => {
    const there = setGateOpens(signed, id, 'right');
    expect(standing(setGateOpens(there, id, 'left')).kind).toBe('signed');
  });
});
