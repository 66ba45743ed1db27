import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alternativesOf } from '../../../src/site/alternativesOf.ts';
import { builtAs } from '../../../src/site/builtAs.ts';
import { drawnAlike } from '../../../src/site/drawnAlike.ts';
import { addAlternative } from '../../../src/site/edits/addAlternative.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { changeAlternative } from '../../../src/site/edits/changeAlternative.ts';
import { moveAlternative } from '../../../src/site/edits/moveAlternative.ts';
import { removeAlternative } from '../../../src/site/edits/removeAlternative.ts';
import { removeSpec } from '../../../src/site/edits/removeSpec.ts';
import { setLineSpec } from '../../../src/site/edits/setLineSpec.ts';
import { takeAlternative } from '../../../src/site/edits/takeAlternative.ts';
import type { FenceLine } from '../../../src/site/fenceLine.ts';
import type { AlternativeId, SpecId } from '../../../src/site/ids.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { brokenReference } from '../../../src/site/references.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import { sheetText } from '../../../src/site/sheetText.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

const four = sampleSite.specs['spec:1'];
if (four === undefined) throw new Error('expected a spec');

/** The sample with builds of 4, 6 and 8 ft, its two lines of 4 ft. */
const three = [72, 96].reduce(
  (site, height, n) =>
    addSpec(site, `spec:${n + 2}`, {
      ...four,
      label: `Invented ${height / 12} ft`,
      fabricHeight: inches(height),
    }),
  sampleSite,
);
/** Its closed line 6 ft high. */
const mixed = setLineSpec(three, 'line:2', 'spec:2');

const added = addAlternative(addAlternative(mixed, ' Tall '), 'Taller');
const tall = changeAlternative(added, 'alternative:1', { instead: { 'spec:1': 'spec:2' } });

const heights = (site: Site): number[] =>
  Object.values<FenceLine>(site.lines).map(({ spec }) => site.specs[spec]?.fabricHeight ?? 0);
const heightsIn = (site: Site, id: AlternativeId): number[] => {
  const alternative = site.alternatives[id];
  if (alternative === undefined) throw new Error(`no ${id}`);
  return heights(builtAs(site, alternative));
};

describe('alternatives of a site', () => {
  it('[S81] begin as the plan, after the others, and are kept in the file', () => {
    expect(added.alternatives).toEqual({
      'alternative:1': { label: 'Tall', order: 'a0', instead: {} },
      'alternative:2': { label: 'Taller', order: 'a1', instead: {} },
    });
    expect(heightsIn(added, 'alternative:1')).toEqual([48, 72]);
    expect(openSite(saveSite(tall))).toEqual({ ok: true, value: tall });
    expect(addAlternative(tall, 'Again', 'alternative:1')).toBe(tall);
  });

  it('[S81] name other builds one by one, and no more where the plan’s is chosen again', () => {
    const both = changeAlternative(tall, 'alternative:1', {
      label: 'Tallest',
      instead: { 'spec:2': 'spec:3' },
    });
    expect(both.alternatives['alternative:1']).toEqual({
      label: 'Tallest',
      order: 'a0',
      instead: { 'spec:1': 'spec:2', 'spec:2': 'spec:3' },
    });
    const back = changeAlternative(both, 'alternative:1', { instead: { 'spec:1': 'spec:1' } });
    expect(back.alternatives['alternative:1']?.instead).toEqual({ 'spec:2': 'spec:3' });
    expect(changeAlternative(tall, 'alternative:1', { label: 'Tall' })).toBe(tall);
  });

  it('[S82] have the lines built otherwise, all at once, and nothing else', () => {
    const site = changeAlternative(tall, 'alternative:1', {
      instead: { 'spec:1': 'spec:2', 'spec:2': 'spec:1' },
    });
    const { 'alternative:1': swapped } = site.alternatives;
    const built = builtAs(site, swapped ?? { instead: {} });
    expect(heights(built)).toEqual([72, 48]);
    expect({ ...built, lines: site.lines }).toEqual(site);
    expect(built.gates).toBe(site.gates);
    expect(builtAs(site, { instead: {} })).toBe(site);
  });

  it('[S80] change places with the next, and the first and last stay', () => {
    const names = (site: Site): string[] => alternativesOf(site).map(({ label }) => label);
    const moved = moveAlternative(tall, 'alternative:2', 'before');
    expect(names(moved)).toEqual(['Taller', 'Tall']);
    expect(moveAlternative(moved, 'alternative:2', 'behind')).toEqual(tall);
    expect(moveAlternative(tall, 'alternative:1', 'before')).toBe(tall);
    expect(moveAlternative(tall, 'alternative:2', 'behind')).toBe(tall);
    expect(names(removeAlternative(moved, 'alternative:2'))).toEqual(['Tall']);
  });

  it('[S80] [S22] keep the builds that they name', () => {
    const on = setLineSpec(tall, 'line:2', 'spec:1');
    expect(() => removeSpec(on, 'spec:2')).toThrow(
      new RangeError('specs: expected one that no alternative names, "Tall" names "spec:2"'),
    );
    // one that is replaced is named as well
    const off = setLineSpec(setLineSpec(tall, 'line:1', 'spec:3'), 'line:2', 'spec:3');
    expect(() => removeSpec(off, 'spec:1')).toThrow(/"Tall" names "spec:1"/);
    expect(removeSpec(removeAlternative(on, 'alternative:1'), 'spec:2').specs).not.toHaveProperty(
      'spec:2',
    );
    expect(removeSpec(on, 'spec:3').specs).not.toHaveProperty('spec:3');
  });

  it.each([
    ['add', () => addAlternative(mixed, '  ')],
    ['name', () => changeAlternative(tall, 'alternative:1', { label: '' })],
    ['take', () => takeAlternative(tall, 'alternative:1', ' ')],
  ])('[S11] [S80] %s: a name of blanks is refused in one line', (_, edit) => {
    expect(edit).toThrow(/^name: expected what to call this way to build it, found " *"$/);
  });

  it('[S11] [S80] what is not there is refused in one line', () => {
    const unknown = 'alternatives: expected an alternative of this site, found "alternative:7"';
    for (const edit of [changeAlternative, moveAlternative, removeAlternative, takeAlternative]) {
      expect(() => (edit as (...all: unknown[]) => Site)(tall, 'alternative:7', {})).toThrow(
        unknown,
      );
    }
    for (const instead of [{ 'spec:7': 'spec:1' }, { 'spec:1': 'spec:7' }] as const) {
      expect(() => changeAlternative(tall, 'alternative:1', { instead })).toThrow(
        'specs: expected a fence spec of this site, found "spec:7"',
      );
    }
  });

  it('[S84] change no layout and no sheet', () => {
    expect(drawnAlike(mixed, tall)).toBe(true);
    expect(sheetText(tall)).toBe(sheetText(mixed));
    expect(saveSite(tall)).not.toBe(saveSite(mixed));
    // nor does a build that is there for an alternative alone
    const heavy = addSpec(tall, 'spec:heavy', { ...four, label: 'Heavy' });
    expect(sheetText(heavy)).toBe(sheetText(mixed));
    expect(sheetText(setLineSpec(heavy, 'line:1', 'spec:heavy'))).not.toBe(sheetText(mixed));
  });
});

describe('taking an alternative as the plan', () => {
  it('[S83] leaves what the plan was in its place', () => {
    const plan = changeAlternative(tall, 'alternative:1', {
      instead: { 'spec:1': 'spec:3', 'spec:2': 'spec:1' },
    });
    const other = changeAlternative(plan, 'alternative:2', { instead: { 'spec:2': 'spec:3' } });
    const taken = takeAlternative(other, 'alternative:1', 'Low');
    expect(heights(taken)).toEqual([96, 48]);
    expect(taken.alternatives['alternative:1']).toEqual({
      label: 'Low',
      order: 'a0',
      instead: { 'spec:3': 'spec:1', 'spec:1': 'spec:2' },
    });
    expect(heightsIn(taken, 'alternative:1')).toEqual([48, 72]);
    expect(heightsIn(taken, 'alternative:2')).toEqual([48, 96]);
    expect(takeAlternative(taken, 'alternative:1', 'Tall')).toEqual(other);
    expect(takeAlternative(added, 'alternative:1', 'Low')).toBe(added);
  });

  it('[S83] copies a build that two of the plan would share', () => {
    const taken = takeAlternative(tall, 'alternative:1', 'Low');
    expect(heights(taken)).toEqual([72, 72]);
    expect(taken.specs['spec:4']).toEqual({
      ...tall.specs['spec:2'],
      label: 'Invented 6 ft, for Invented 4 ft',
    });
    expect(taken.lines['line:2']?.spec).toBe('spec:2');
    expect(heightsIn(taken, 'alternative:1')).toEqual([48, 72]);
    const back = takeAlternative(taken, 'alternative:1', 'Tall');
    expect(back.lines).toEqual(tall.lines);
    expect(heightsIn(back, 'alternative:1')).toEqual([72, 72]);
  });

  it('[S83] keeps what every alternative gives its lines, whatever they name', () => {
    const spec = fc.constantFrom<SpecId>('spec:1', 'spec:2', 'spec:3');
    const instead = fc.dictionary(spec, spec) as fc.Arbitrary<Record<SpecId, SpecId>>;
    fc.assert(
      fc.property(fc.tuple(spec, spec), instead, instead, (specs, one, two) => {
        const drawn = specs.reduce(
          (site, id, n) => setLineSpec(site, n === 0 ? 'line:1' : 'line:2', id),
          added,
        );
        const named = changeAlternative(drawn, 'alternative:1', { instead: one });
        const before = changeAlternative(named, 'alternative:2', { instead: two });
        const text = JSON.stringify(before);
        const after = takeAlternative(before, 'alternative:1', 'Was the plan');
        expect(JSON.stringify(before)).toBe(text);
        expect(brokenReference(after)).toBeNull();
        expect(heights(after)).toEqual(heightsIn(before, 'alternative:1'));
        expect(heightsIn(after, 'alternative:2')).toEqual(heightsIn(before, 'alternative:2'));
        if (after === before) return;
        const { 'alternative:1': taken } = after.alternatives;
        expect(builtAs(after, taken ?? { instead: {} }).lines).toEqual(before.lines);
      }),
    );
  });
});
