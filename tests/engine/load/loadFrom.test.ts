import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newCarry, type Pieces } from '../../../src/engine/carry/carry.ts';
import { layOutFrom, type Laying } from '../../../src/engine/layOutFrom.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Load } from '../../../src/engine/load/load.ts';
import { loadOf } from '../../../src/engine/load/loadOf.ts';
import { setCounting } from '../../../src/site/edits/setCounting.ts';
import type { Counting } from '../../../src/site/counting.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { yardOf } from '../../bench/yardOf.ts';
import { after, anyMove } from '../../site/edits/anyEdits.ts';
import { randomSite } from '../randomSite.ts';

const settings: readonly Partial<Counting>[] = [
  { postTies: inches(12), times: { tie: 2 } },
  { railStick: inches(240) },
  { kerf: inches(1 / 4) },
  { roll: inches(1200) },
  { postStick: inches(252) },
  { railJoint: 'sleeve' },
];

const step = fc.oneof(
  anyMove.map((move) => (site: Site) => after(site, move)),
  fc.constantFrom(...settings).map((fields) => (site: Site) => setCounting(site, fields)),
);

/** One list after the other, each from what the one before leaves. */
const goingOn = () => {
  let pieces: Pieces | undefined;
  let laying: Laying | null = null;
  return (site: Site): Load => {
    laying = layOutFrom(site, laying);
    const carry = newCarry(pieces);
    const load = loadOf(site, laying.layout, carry);
    ({ pieces } = carry);
    return load;
  };
};

describe('a load list from the one before', () => {
  it('[L45] is the same as from nothing after any edits', () => {
    fc.assert(
      fc.property(randomSite, fc.array(step, { minLength: 1, maxLength: 6 }), (drawn, steps) => {
        const load = goingOn();
        load(drawn);
        let site = drawn;
        for (const edit of steps) {
          site = edit(site);
          expect(load(site)).toEqual(loadOf(site, layOutSite(site)));
        }
      }),
      { numRuns: 60 },
    );
  }, 120_000);

  it('[L45] cuts and counts nothing again that a setting does not change', () => {
    const site = yardOf(400);
    const load = goingOn();
    const before = load(site);
    const tied = load(setCounting(site, { postTies: inches(6) }));
    expect(tied.tickets.map(({ ticket }) => ticket)).toEqual(
      before.tickets.map(({ ticket }) => ticket),
    );
    tied.tickets.forEach(({ ticket }, n) => expect(ticket).toBe(before.tickets[n]?.ticket));
    const changed = tied.lines.filter((line, n) => line.count !== before.lines[n]?.count);
    expect(changed.length).toBeGreaterThan(0);
    expect(changed.length).toBeLessThan(before.lines.length / 2);
    const cutOther = load(setCounting(site, { railStick: inches(240) }));
    const same = cutOther.tickets.filter(({ ticket }) =>
      tied.tickets.some((one) => one.ticket === ticket),
    );
    expect(same.map(({ kind }) => kind)).not.toContain('rail');
    expect(same.map(({ kind }) => kind)).toContain('fabric');
  });
});
