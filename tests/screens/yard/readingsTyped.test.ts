import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { gradeText, readGrade } from '../../../src/screens/yard/cards/readGrade.ts';
import { postReading } from '../../../src/screens/yard/cards/postReading.ts';
import { readHeight } from '../../../src/screens/yard/cards/readHeight.ts';
import { setHook } from '../../../src/site/edits/setHook.ts';
import { bare, fence } from '../../engine/plainYard.ts';

describe('a grade that is typed', () => {
  it('is percent, with its sign or without, or nothing', () => {
    for (const text of ['15', '15 %', '15%', ' 15.0 % ']) {
      expect(readGrade(text)).toEqual({ ok: true, value: 0.15 });
    }
    expect(readGrade('  ')).toEqual({ ok: true, value: null });
  });

  it('is refused in one line where it is no percent from 0 to 100', () => {
    for (const text of ['steep', '-3', '101', '1:7', '15 ft']) {
      const found = readGrade(text);
      expect(found.ok).toBe(false);
      if (!found.ok) expect(found.reason).toMatch(/expected percent from 0 to 100/);
    }
  });

  it('comes back as it is written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1000 }), (tenths) => {
        const read = readGrade(gradeText(tenths / 1000));
        expect(read.ok && read.value).toBeCloseTo(tenths / 1000, 12);
      }),
    );
  });
});

describe('a height that is typed', () => {
  it('has either sign, and the unit of the yard where none is typed', () => {
    expect(readHeight('+2 1/2"', 'feet')).toEqual({ ok: true, value: 2.5 });
    expect(readHeight('-2', 'feet')).toEqual({ ok: true, value: -24 });
    expect(readHeight('0.254', 'm')).toEqual({ ok: true, value: expect.closeTo(10, 9) });
    expect(readHeight('high', 'feet').ok).toBe(false);
  });
});

describe('the reading at a post', () => {
  const site = fence(bare, [
    [0, 0],
    [360, 0],
  ]);
  const layout = layOutSite(site);
  const line = layout.lines['line:1']?.runs[0]?.posts[1]?.post ?? 'post:';

  it('is that of the tape of its run, from the post at which that is hooked', () => {
    expect(postReading(site, layout, line)).toEqual({ reading: 120, hookedAt: 'A' });
    const turned = setHook(site, 'line:1', 'end');
    expect(postReading(turned, layOutSite(turned), line)).toEqual({ reading: 240, hookedAt: 'B' });
  });

  it('is none for a post that is on no run', () => {
    expect(postReading(site, layout, 'post:none')).toBeNull();
  });
});
