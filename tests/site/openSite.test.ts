import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openSite } from '../../src/site/openSite.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import { sampleDocument, sampleSite } from './sampleSite.ts';

const text = saveSite(sampleSite);

const reasonOf = (file: string): string => {
  const opened = openSite(file);
  return opened.ok ? 'opened' : opened.reason;
};

/** The sample with one value, at a path of keys, exchanged or taken out. */
const changed = (path: readonly string[], value: unknown): string => {
  const copy = structuredClone(sampleDocument) as unknown as Record<string, unknown>;
  const inner = path.slice(0, -1).reduce((at, key) => at[key] as Record<string, unknown>, copy);
  inner[path.at(-1) ?? ''] = value;
  return JSON.stringify(copy);
};

describe('opening a site file', () => {
  it.each([
    ['', 'this is not a site file: expected JSON, found nothing'],
    ['  \n', 'this is not a site file: expected JSON, found nothing'],
    ['%PDF-1.7\nx', 'this is not a site file: expected JSON, found "%PDF-1.7\\nx"'],
    ['17', 'this is not a site file: expected format "lathline site", found 17'],
    ['[]', 'this is not a site file: expected format "lathline site", found a list'],
    ['{}', 'this is not a site file: expected format "lathline site", found nothing'],
    [
      '{"format":"other"}',
      'this is not a site file: expected format "lathline site", found "other"',
    ],
    ['{"format":"lathline site"}', 'version: expected a whole number from 1 to 10, found nothing'],
  ])('[S2] %j is refused', (file, reason) => {
    expect(reasonOf(file)).toBe(reason);
  });

  it('[S2] a file that is cut off says so, with its last characters', () => {
    expect(reasonOf(text.slice(0, 100))).toMatch(
      /^site file is cut off or damaged: expected whole JSON, found it to end with "/,
    );
  });

  it('[S3] a newer version is refused by name', () => {
    expect(reasonOf(changed(['version'], 11))).toBe(
      'this file was saved by a newer version (format version 11); this program reads up to 10',
    );
  });

  it.each([
    [['marks', 'mark:1', 'x'], 'ten', 'marks › mark:1 › x: expected a number, found "ten"'],
    [['marks', 'mark:1', 'x'], undefined, 'marks › mark:1 › x: expected a number, found nothing'],
    [
      ['marks', 'mark:1', 'x'],
      1e9,
      'marks › mark:1 › x: expected at most 633600, found 1000000000',
    ],
    [['marks', 'mark:1', 'z'], 3, 'marks › mark:1 › z: expected no such field, found 3'],
    [['marks', '7'], {}, 'marks › 7: expected an id such as "mark:12", found "7"'],
    [['marks'], [], 'marks: expected an object, found a list'],
    [['lengths', 'fraction'], 3, 'lengths › fraction: expected 2 or 4 or 8 or 16 or 32, found 3'],
    [
      ['gates', 'gate:1', 'opens'],
      'up',
      'gates › gate:1 › opens: expected "left" or "right", found "up"',
    ],
    [
      ['gates', 'gate:1', 'leaves', 'leaf:1', 'widths', 'top'],
      0,
      'gates › gate:1 › leaves › leaf:1 › widths › top: expected more than 0, found 0',
    ],
    [
      ['gates', 'gate:1', 'leaves', 'leaf:1', 'order'],
      'a-b',
      'gates › gate:1 › leaves › leaf:1 › order: expected up to 60 letters and digits, found "a-b"',
    ],
    [
      ['features', 'feature:2', 'kind'],
      'moat',
      'features › feature:2 › kind: expected "building" or "paving" or "pool" or "keep-out" or ' +
        '"boundary" or "height zone" or "utility" or "tree" or "note", found "moat"',
    ],
    [
      ['hardware', 'hardware:1', 'takes'],
      { low: 3, planned: 2, high: 1 },
      'hardware › hardware:1 › takes: expected low, planned and high in rising order, found an object',
    ],
    [
      ['job', 'name'],
      'x'.repeat(201),
      `job › name: expected at most 200 characters, found "${'x'.repeat(39)}…"`,
    ],
  ])('[S2] %j as %j names place, expectation and value', (path, value, reason) => {
    expect(reasonOf(changed(path, value))).toBe(reason);
  });

  it('[S2] the first of several faults speaks for all', () => {
    const file = changed(['marks', 'mark:1'], { x: 'a', y: 'b', label: 3, fixed: false });
    expect(reasonOf(file)).toBe(
      'marks › mark:1 › x: expected a number, found "a" (and 2 more like it)',
    );
  });

  it('a byte order mark in front does no harm', () => {
    expect(openSite(`\uFEFF${text}`)).toEqual({ ok: true, value: sampleSite });
  });

  it('[S6] lines of no mark and of one open and are kept', () => {
    const file = changed(['lines', 'line:3'], {
      ...sampleDocument.lines['line:2'],
      path: {},
    });
    const single = changed(['lines', 'line:3'], {
      ...sampleDocument.lines['line:2'],
      path: { 'vertex:50': { mark: 'mark:1', order: 'a0' } },
    });
    const [none, one] = [openSite(file), openSite(single)];
    expect(none.ok && none.value.lines['line:3']?.path).toEqual({});
    expect(one.ok && Object.keys(one.value.lines['line:3']?.path ?? {})).toEqual(['vertex:50']);
  });

  it('[S5] a prototype’s name, deep nesting and too much text are refused, nothing is polluted', () => {
    const proto = text.replace('"marks": {', '"marks": {"__proto__": {"polluted": 1},');
    expect(reasonOf(proto)).toBe('marks: expected no field of that name, found "__proto__"');
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    const deep = `{"format":"lathline site","version":1,"marks":${'['.repeat(1e5)}${']'.repeat(1e5)}}`;
    expect(reasonOf(deep)).toBe(
      'marks › 0 › 0: expected at most 12 objects in one another, found more',
    );
    expect(reasonOf(' '.repeat(20_000_001))).toBe(
      'site file: expected at most 20000000 characters, found 20000001',
    );
  });

  it('[S5] more marks than the limit are refused by their number', () => {
    const marks = Object.fromEntries(
      Array.from({ length: 20_001 }, (_, n) => [
        `mark:${n}`,
        { x: 0, y: 0, label: '', fixed: false },
      ]),
    );
    expect(reasonOf(changed(['marks'], marks))).toBe(
      'marks: expected at most 20000 entries, found 20001',
    );
  });

  it('[S5] a ring is refused', async () => {
    const { openDocument } = await import('../../src/site/openDocument.ts');
    const ring: Record<string, unknown> = { format: 'lathline site', version: 1 };
    ring['marks'] = ring;
    expect(openDocument(ring)).toMatchObject({ ok: false });
  });
});

describe('texts that nobody would save', () => {
  const refusedInOneLine = (file: string): void => {
    const opened = openSite(file);
    if (opened.ok) return;
    expect(opened.reason).not.toMatch(/[\n\r\u2028\u2029]/);
    expect(opened.reason.length).toBeLessThan(400);
  };

  it('[S2] a truncated file is refused in one line', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: text.trimEnd().length - 1 }), (end) => {
        const opened = openSite(text.slice(0, end));
        expect(opened.ok).toBe(false);
        refusedInOneLine(text.slice(0, end));
      }),
    );
  });

  it('[S2] a file with characters exchanged opens or is refused in one line', () => {
    const flips = fc.array(
      fc.record({
        at: fc.nat(text.length - 1),
        to: fc.string({ unit: 'binary', minLength: 1, maxLength: 1 }),
      }),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(flips, (changes) => {
        const letters = [...text];
        for (const { at, to } of changes) letters[at] = to;
        refusedInOneLine(letters.join(''));
      }),
    );
  });

  it('[S2] foreign JSON in any place of a file opens or is refused in one line', () => {
    const names = ['job', 'lengths', 'marks', 'lines', 'gates', 'features', 'specs', 'hardware'];
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.jsonValue(), (name, value) => {
        refusedInOneLine(changed([name], value));
      }),
    );
    fc.assert(
      fc.property(
        fc.constantFrom('marks', 'lines', 'gates', 'features'),
        fc.dictionary(
          fc.constantFrom('mark:1', 'line:1', 'gate:1', 'feature:1', '__proto__', '\n'),
          fc.jsonValue(),
        ),
        (name, value) => refusedInOneLine(changed([name], value)),
      ),
    );
    fc.assert(fc.property(fc.jsonValue(), (value) => refusedInOneLine(JSON.stringify(value))));
    fc.assert(fc.property(fc.string({ unit: 'binary' }), refusedInOneLine));
  });
});
