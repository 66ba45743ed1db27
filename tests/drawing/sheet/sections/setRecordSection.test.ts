import { describe, expect, it } from 'vitest';
import { formRow, layForm } from '../../../../src/drawing/sheet/flow/layForm.ts';
import { setRecordSection } from '../../../../src/drawing/sheet/sections/setRecordSection.ts';
import { leansForm, leavesForm, widthsForm } from '../../../../src/drawing/tables/setForms.ts';
import { setPosts } from '../../../../src/drawing/tables/setPosts.ts';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import { asSetSchema, type AsSet } from '../../../../src/site/asSet.ts';
import { recordAsSet } from '../../../../src/site/edits/recordAsSet.ts';
import { inches } from '../../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../../../engine/plainYard.ts';
import { overlapsOf, textsOf } from '../../textsOf.ts';
import { sampleYards } from '../../sampleYards.ts';

const yard = gateOn(
  fence(bare, [
    [0, 0],
    [400, 0],
  ]),
  0,
  { from: 'start', offset: 120 },
);
const gate = firstGate(yard);

/** Every field of a set record has a figure or word of its own. */
const record: AsSet = {
  by: 'R. Hand',
  on: '2026-05-04',
  top: inches(48.0625),
  bottom: inches(48.1875),
  leans: { start: inches(0.25), end: inches(-0.375) },
  leaves: {
    'leaf:1': { top: inches(44.0625), middle: inches(44.125), bottom: inches(44.1875) },
  },
  hinges: { 'leaf:1': inches(1.9375) },
  remark: 'Rock at C',
};

const wordsOf = (site: typeof yard, width = 7.1): string[] =>
  setRecordSection(site, layOutSite(site), width).flatMap(({ head, rows }) =>
    [head, ...rows].flatMap(({ atoms }) => textsOf(atoms).map(({ text }) => text)),
  );

describe('setRecordSection', () => {
  it('[D135] prints what is in the set record, each field of it, and else leaves blanks', () => {
    const leaf = Object.keys(yard.gates[gate]?.leaves ?? {})[0] as keyof AsSet['leaves'];
    const own: AsSet = {
      ...record,
      leaves: { [leaf]: record.leaves['leaf:1']! },
      hinges: { [leaf]: record.hinges['leaf:1']! },
    };
    const words = wordsOf(recordAsSet(yard, gate, own));
    const printed: Readonly<Record<keyof typeof asSetSchema.shape, readonly string[]>> = {
      by: ['R. Hand'],
      on: ['2026-05-04'],
      top: ['4\'-0 1/16"'],
      bottom: ['4\'-0 3/16"'],
      leans: ['1/4"', '-3/8"'],
      leaves: ['3\'-8 1/16"', '3\'-8 1/8"', '3\'-8 3/16"'],
      hinges: ['1 15/16"'],
      remark: ['Rock at C'],
    };
    // a field that a set record gets has to have its place on the form
    expect(Object.keys(printed).toSorted()).toEqual(Object.keys(asSetSchema.shape).toSorted());
    const all = Object.values(printed).flat();
    expect(all.filter((text) => !words.includes(text))).toEqual([]);
    expect(all.filter((text) => wordsOf(yard).includes(text))).toEqual([]);
  });

  it('[D135] has a row for every opening with what to hold, and from where to where it holds', () => {
    const [row] = widthsForm(yard, layOutSite(yard)).rows;
    // 44, 1 7/8 and 2 1/8; the latch catches from 2 to 2 1/4
    expect(row).toEqual(['Gate, B–C', '4\'-0"', '3\'-11 7/8" to 4\'-0 1/8"', '', '', '', '']);
    expect(leansForm(yard, layOutSite(yard)).rows).toEqual([['Gate, B–C', '', '', '']]);
    expect(leavesForm(yard, layOutSite(yard)).rows[0]?.[0]).toBe('Gate, B–C, leaf');
  });

  it('[D135] lists every post once, with its tape and a box to tick', () => {
    for (const { site, layout } of sampleYards) {
      const { rows, groups, columns } = setPosts(site, layout);
      const tags = rows.map(([tag]) => tag);
      expect(tags.toSorted()).toEqual([...layout.posts.values()].map(({ tag }) => tag).toSorted());
      expect(groups).toHaveLength(rows.length);
      expect(rows.every((row) => row.length === columns.length)).toBe(true);
    }
    const { rows, groups } = setPosts(yard, layOutSite(yard));
    expect(rows[1]?.slice(0, 5)).toEqual(['B', 'gate', '10\'-0"', '', '36"']);
    expect(groups[0]).toBe('Tape A–D, hooked at A');
  });

  it('[D136] has rows of 0.3 in at least, whatever was typed', () => {
    expect(formRow).toBeGreaterThanOrEqual(0.3);
    const long = {
      ...record,
      leaves: {},
      hinges: {},
      remark: 'Rock '.repeat(60),
      by: 'R'.repeat(60),
    };
    const stacks = setRecordSection(recordAsSet(yard, gate, long), layOutSite(yard), 6.6);
    for (const { head, rows } of stacks) {
      for (const block of [head, ...rows]) expect(overlapsOf(block.atoms)).toEqual([]);
      for (const { height } of rows) expect(height).toBeGreaterThanOrEqual(0.3);
    }
  });

  it('[D136] what is too wide is narrowed alike and keeps to its width', () => {
    const columns = Array.from({ length: 9 }, () => ({ heading: 'Wide', hand: 1.2, share: 1 }));
    const { rows } = layForm({ title: 'Form', columns, rows: [columns.map(() => 'typed')] }, 5);
    const ends = textsOf(rows[0]?.atoms ?? []).map(({ at }) => at.x);
    expect(Math.max(...ends)).toBeLessThan(5);
  });

  it('is nothing without posts', () => {
    expect(setRecordSection(bare, layOutSite(bare), 7)).toEqual([]);
  });
});
