import { describe, expect, it } from 'vitest';
import { cutTable } from '../../../src/drawing/tables/cutTable.ts';
import { loadTable } from '../../../src/drawing/tables/loadTable.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { loadOf } from '../../../src/engine/load/loadOf.ts';
import { addOffcut } from '../../../src/site/edits/addOffcut.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { setCounting } from '../../../src/site/edits/setCounting.ts';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, spec } from '../plainYard.ts';

// 4 ft high: nothing is braced
const run54 = changeSpec(
  fence(bare, [
    [0, 0],
    [648, 0],
  ]),
  'spec:six',
  { fabricHeight: inches(48) },
);
const rail = 'rail 1.66x0.13';
const fabric = 'fabric 48in-2-0.148';

const lying = (site: Site, of: string, length: number, count = 1): Site =>
  addOffcut(site, { of, length: inches(length), count });

const loadedWith = (site: Site) => loadOf(site, layOutSite(site));

/** What a line is bought as in the printed list, and what the ticket of its code says of itself. */
const told = (site: Site, code: string) => {
  const { lines, tickets } = loadedWith(site);
  const line = lines.find((one) => one.code === code);
  const ticket = tickets.find((one) => one.code === code);
  if (line === undefined || ticket === undefined) throw new Error(`no ${code}`);
  const { title, rows } = cutTable(ticket, site);
  return {
    bought: loadTable({ lines: [line] }, site).rows[0]?.[3],
    title: title.slice(title.indexOf(': ') + 2),
    rows: rows.map(([, from, , left]) => [from, left]),
  };
};

describe('a load list with what lies in the yard', () => {
  it('[L43] tells what is bought, and how many lengths from the yard go with it', () => {
    // by hand: 645 5/8 in of rail are 21 ft, 21 ft and 141 5/8 in, which 12 ft from the yard holds
    expect(told(run54, rail).bought).toBe(`3 × stick of 21'-0", 9'-2 3/8" left`);
    expect(told(lying(run54, rail, 144), rail)).toEqual({
      bought: `2 × stick of 21'-0", and 1 length from the yard`,
      title: '2 sticks, proven the fewest, and 1 from the yard, 2 joints',
      rows: [
        // 144 less 141 5/8 and the cut
        [`the yard, 12'-0"`, '2 1/4"'],
        [`21'-0"`, ''],
      ],
    });
    // 54 ft of fabric: a roll and 4 ft
    const woven = told(lying(run54, fabric, 60), fabric);
    expect(woven.bought).toBe(`1 × roll of 50'-0", and 1 length from the yard`);
    expect(woven.rows[0]).toEqual([`the yard, 5'-0"`, `1'-0"`]);
  });

  it('[L43] says so where nothing is bought at all', () => {
    const { bought, title } = told(lying(run54, rail, 252, 5), rail);
    expect(bought).toBe('none, 3 lengths from the yard');
    expect(title).toBe('none bought, 3 from the yard, 2 joints');
  });

  it('[L42] cuts posts, rolls and lumber from the yard as rails, each from its own', () => {
    const posts = setCounting(run54, { postStick: inches(252) });
    const own = loadedWith(posts).tickets.filter(({ kind }) => kind === 'post');
    expect(own).toHaveLength(2);
    for (const { code } of own) {
      const given = loadedWith(lying(posts, code, 252, 10)).tickets;
      const bought = given.filter(({ kind }) => kind === 'post').map(({ ticket }) => ticket.bought);
      expect(bought).toEqual(own.map((one) => (one.code === code ? 0 : one.ticket.bought)));
    }
    const boards: FenceSpec['infill'] = {
      kind: 'boards',
      board: 'pine',
      rail: '2 × 4',
      width: inches(5.5),
      gap: inches(0),
      rails: 2,
    };
    const wooden = changeSpec(run54, 'spec:six', { infill: boards, topRail: null });
    const [lumber] = loadedWith(wooden).tickets;
    expect(lumber?.kind).toBe('lumber');
    // 12 rails of 9 ft of lumber of 16 ft: one a length
    expect(lumber?.ticket.bought).toBe(12);
    const given = loadedWith(lying(wooden, lumber?.code ?? '', 110, 5)).tickets[0];
    expect(given?.ticket.bought).toBe(7);
  });

  it('[L42] two pipes of one size share what lies there of it', () => {
    const twin = changeSpec(run54, 'spec:six', {
      bottomRail: {
        label: 'of another mill',
        od: spec.topRail?.od ?? inches(1.66),
        wall: inches(0.13),
      },
    });
    expect(loadedWith(twin).tickets.filter(({ code }) => code === rail)).toHaveLength(2);
    const { lines, tickets } = loadedWith(lying(twin, rail, 252, 4));
    const both = tickets.filter(({ code }) => code === rail).map(({ ticket }) => ticket);
    expect(both.map(({ bought }) => bought)).toEqual([0, 2]);
    const used = both.flatMap(({ sticks }) => sticks).filter(({ from }) => from === 'offcut');
    expect(used).toHaveLength(4);
    // and the list says of each what is bought for it
    const sold = lines.filter(({ code }) => code === rail).map((line) => line.sold?.count);
    expect(sold).toEqual([0, 2]);
  });

  it('[L42] what no ticket is cut from stays there and changes nothing', () => {
    const other = lying(lying(run54, 'rail 9.9x0.1', 252, 9), 'no-such-line', 100);
    expect(loadedWith(other)).toEqual(loadedWith(run54));
  });
});
