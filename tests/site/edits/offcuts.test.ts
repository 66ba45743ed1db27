import { describe, expect, it } from 'vitest';
import { addOffcut } from '../../../src/site/edits/addOffcut.ts';
import { changeOffcut } from '../../../src/site/edits/changeOffcut.ts';
import { removeOffcut } from '../../../src/site/edits/removeOffcut.ts';
import { limits } from '../../../src/site/limits.ts';
import type { Offcut } from '../../../src/site/offcut.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

const rail: Offcut = { of: 'rail 1.66x0.13', length: inches(72), count: 3 };
const added = addOffcut(sampleSite, rail);

describe('lengths that lie in the yard', () => {
  it('[S90] are added under the next id, changed field by field and taken off again', () => {
    expect(added.offcuts).toEqual({ 'offcut:1': rail });
    const two = addOffcut(added, { ...rail, of: 'fabric 72in-2-0.148' });
    expect(Object.keys(two.offcuts)).toEqual(['offcut:1', 'offcut:2']);
    const changed = changeOffcut(two, 'offcut:1', { length: inches(60) });
    expect(changed.offcuts['offcut:1']).toEqual({ ...rail, length: 60 });
    expect(changed.offcuts['offcut:2']).toBe(two.offcuts['offcut:2']);
    expect(changeOffcut(two, 'offcut:1', { count: 3 })).toBe(two);
    expect(removeOffcut(added, 'offcut:1').offcuts).toEqual({});
    expect(sampleSite.offcuts).toEqual({});
  });

  it('[S90] go with the file and come back as they were', () => {
    const opened = openSite(saveSite(added));
    expect(opened.ok && opened.value).toEqual(added);
  });

  it.each([
    [{ length: inches(0) }, 'length'],
    [{ length: inches(-1) }, 'length'],
    [{ length: inches(Infinity) }, 'length'],
    [{ count: 0 }, 'count'],
    [{ count: 1.5 }, 'count'],
    [{ count: 1001 }, 'count'],
    [{ of: '' }, 'of'],
  ])('[S91] %o is refused in one line that names its place', (fields, place) => {
    expect(() => addOffcut(sampleSite, { ...rail, ...fields })).toThrow(
      new RegExp(`^offcuts › offcut:1 › ${place}: expected[^\n]*$`),
    );
    expect(() => changeOffcut(added, 'offcut:1', fields)).toThrow(RangeError);
  });

  it('[S91] what is not there is neither changed nor removed', () => {
    const line = 'offcuts: expected a length from the yard of this site, found "offcut:9"';
    expect(() => changeOffcut(added, 'offcut:9', { count: 1 })).toThrow(line);
    expect(() => removeOffcut(added, 'offcut:9')).toThrow(line);
  });

  it('[S91] one entry too many is refused', () => {
    const offcuts = Object.fromEntries(
      Array.from({ length: limits.offcuts }, (_, n) => [`offcut:${n + 1}`, rail]),
    );
    expect(() => addOffcut({ ...sampleSite, offcuts }, rail)).toThrow(
      `offcuts: expected at most ${limits.offcuts} entries, found ${limits.offcuts + 1}`,
    );
  });
});
