import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bookFromCsv } from '../../../src/importers/book/bookFromCsv.ts';
import type { BookImport } from '../../../src/importers/book/bookImport.ts';
import { bookToCsv } from '../../../src/exporters/csv/bookToCsv.ts';
import type { Hardware } from '../../../src/site/hardware.ts';
import type { HardwareId } from '../../../src/site/ids.ts';
import type { Parts } from '../../../src/site/parts.ts';
import { untoldPart } from '../../../src/site/untold.ts';
import { inches } from '../../../src/units/inches.ts';
import { anyPart } from './anyPart.ts';

const anyBook: fc.Arbitrary<Parts> = fc.dictionary(
  fc.stringMatching(/^[A-Za-z0-9-]{1,40}$/).map((tail) => `hardware:${tail}`),
  anyPart,
  { maxKeys: 8 },
);

/** Ids that no test book has: `hardware:new-1` and so on. */
const freshIds = () => {
  let count = 0;
  return (): HardwareId => {
    count += 1;
    return `hardware:new-${count}`;
  };
};

const taken = (text: string, book: Parts = {}): BookImport<HardwareId, Hardware> => {
  const result = bookFromCsv(text, { book, freshId: freshIds() });
  if (!result.ok) throw new Error(result.reason);
  return result.value;
};

const faultOf = (text: string): string => {
  const result = bookFromCsv(text, { book: {}, freshId: freshIds() });
  return result.ok ? '' : result.reason;
};

const hinge: Hardware = {
  ...untoldPart,
  kind: 'hinge',
  label: 'Strap hinge, 2 3/8 post',
  takes: { low: inches(1.75), planned: inches(2), high: inches(2) },
  from: 'measured',
  on: '2026-03-09',
  readings: [1.75, 1.875, 2].map(inches),
  fits: { post: { low: inches(2.375), high: inches(2.375) }, frame: null },
};
const latch: Hardware = {
  ...untoldPart,
  kind: 'latch',
  label: 'Fork',
  takes: { low: inches(1.75), planned: inches(2), high: inches(2.5) },
  from: 'book',
};

describe('the file of a hardware book', () => {
  it('has a header, lengths as on a tape, and one row for each part', () => {
    expect(bookToCsv({ 'hardware:b': latch, 'hardware:a': hinge })).toBe(
      'Kind,Name,Low,Planned,High,Spread,Known from,Day,Readings,Post from,Post to,' +
        'Frame from,Frame to,Pin,Remark,Key\r\n' +
        'hinge,"Strap hinge, 2 3/8 post","1 3/4""","2""","2""",uncertain,measured,2026-03-09,' +
        '"1 3/4""; 1 7/8""; 2""","2 3/8""","2 3/8""",,,,,a\r\n' +
        'latch,Fork,"1 3/4""","2""","2 1/2""",uncertain,book,,,,,,,,,b\r\n',
    );
  });

  it('[X6] any book comes back as it was, into an empty book and into itself', () => {
    fc.assert(
      fc.property(anyBook, (book) => {
        const text = bookToCsv(book);
        const { added, ...rest } = taken(text);
        const back = Object.fromEntries(added.map(({ id, entry }) => [id, entry]));
        expect(back).toEqual(book);
        expect(rest).toEqual({ changed: [], same: 0, refused: [], leftOut: [] });
        const again = taken(text, book);
        expect(again.same).toBe(Object.keys(book).length);
        expect([...again.added, ...again.changed, ...again.refused]).toEqual([]);
      }),
    );
  });

  it('[X6] any other text is told in lines, never thrown', () => {
    const text = bookToCsv({ 'hardware:a': hinge, 'hardware:b': latch });
    fc.assert(
      fc.property(fc.nat(text.length), fc.string({ maxLength: 5 }), (at, noise) => {
        const result = bookFromCsv(text.slice(0, at) + noise + text.slice(at + 1), {
          book: {},
          freshId: freshIds(),
        });
        const lines = result.ok
          ? result.value.refused.map(({ reason }) => reason)
          : [result.reason];
        for (const line of lines) expect(line).not.toContain('\n');
      }),
    );
  });

  it('takes columns in any order, keeps what it has no column for, leaves out foreign ones', () => {
    const text = 'Name,Shelf,HIGH,kind\nFork,B 12,3",Latch\n';
    const { added, changed, leftOut, refused } = taken(text, {
      'hardware:a': hinge,
      'hardware:b': latch,
    });
    expect([added, refused]).toEqual([[], []]);
    expect(leftOut).toEqual(['Shelf']);
    expect(changed).toEqual([
      { line: 2, id: 'hardware:b', entry: { ...latch, takes: { ...latch.takes, high: 3 } } },
    ]);
  });

  it('takes readings for the sizes: a hinge is planned at the largest', () => {
    const { added } = taken('Kind,Name,Readings\nhinge,New,"2, 1 3/4, 1 7/8"\n');
    expect(
      added.map(({ id, entry: { takes, readings, from } }) => [id, takes, readings, from]),
    ).toEqual([
      ['hardware:new-1', { low: 1.75, planned: 2, high: 2 }, [1.75, 1.875, 2], 'measured'],
    ]);
  });

  it('[I3] refuses a row by its line and column, and takes the others', () => {
    const rows = [
      'Kind,Name,Low,Planned,High,Post from,Post to',
      'hinge,Good,1 3/4,2,2,,',
      'hinge,Negative,-1,2,2,,',
      'hinge,Zero,0,2,2,,',
      'hinge,Falls,2,1 3/4,2,,',
      'latch,One size,2,2,2,,',
      'latch,No plan,2,,3,,',
      'hinge,Fit,2,2,2,4,2 3/8',
      'hinge,Half a fit,2,2,2,4,',
      'bolt,Kind,2,2,2,,',
      'hinge,,2,2,2,,',
      'hinge,Words,two,2,2,,',
      'hinge,Short,2',
      '"hinge","Over',
      'two lines",0,1,1,,',
      'Hinge,good,1 3/4,2,2,,',
      'closer,Spring,,,,,',
      'closer,Wide,1,1,1,,',
    ];
    const { added, refused } = taken(rows.join('\n'));
    expect(added.map(({ line }) => line)).toEqual([2, 16, 17]);
    expect(refused.map(({ line, reason }) => `${line}: ${reason}`)).toEqual([
      '3: Low: expected more than 0, found -1"',
      '4: Low: expected more than 0, found 0"',
      '5: Low 2" is more than planned 1 3/4": expected the smaller first',
      '6: High: expected more than low 2"; a catch of one size is met by no opening that is set with a tape',
      '7: Planned: expected a length, found nothing',
      '8: Post from 4" is more than post to 2 3/8": expected the smaller first',
      '9: Post to: expected a length, found nothing',
      '10: Kind: expected hinge or latch or drop rod or closer, found “bolt”',
      '11: Name: expected one',
      expect.stringMatching(/^12: Low: “two” .+expected a length/),
      '13: expected 7 cells as in the header, found 3',
      '14: Low: expected more than 0, found 0"',
      '18: Low: expected nothing for a closer',
    ]);
  });

  it('[I3] refuses a second row for one part, another kind, and a name that is not one part’s', () => {
    const book = { 'hardware:a': hinge, 'hardware:b': latch, 'hardware:c': latch };
    const text =
      'Kind,Name,Key\nhinge,One,a\nhinge,Two,a\nlatch,Other,a\nlatch,Fork,\nlatch,F,no_key\n';
    const { changed, refused } = taken(text, book);
    expect(changed.map(({ id, entry }) => [id, entry.label])).toEqual([['hardware:a', 'One']]);
    expect(refused).toEqual([
      { line: 3, reason: 'the same part as in line 2' },
      { line: 4, reason: 'Kind: expected hinge as the book has it, found latch' },
      { line: 5, reason: 'Name: the book has more than one “Fork”: expected a Key' },
      {
        line: 6,
        reason: 'Key: expected up to 40 letters, digits and hyphens, found “no_key”',
      },
    ]);
  });

  it.each([
    ['', 'line 1: expected a header, found an empty file'],
    ['Kind;Name\nhinge;x', 'line 1: expected a header with the columns Kind, Name'],
    ['Kind,Name,name\n', 'line 1: expected the column Name once'],
    ['Kind,Name\nhinge,"x', 'line 2: a quotation mark is not closed'],
    ['Kind,Name\n\nhinge,"x"y\n', 'line 3: expected a comma behind a closing quotation mark'],
  ])('[I3] refuses the whole of %j in one line', (text, says) => {
    expect(faultOf(text)).toContain(says);
  });
});
