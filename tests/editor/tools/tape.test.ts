import { describe, expect, it } from 'vitest';
import { select } from '../../../src/editor/tools/select/select.ts';
import { tape } from '../../../src/editor/tools/tape.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { deskFor, drive, driven, move, press, release, typed } from '../drive.ts';
import { yard } from '../yard.ts';

const finish = { do: 'finish' } as const;
const tap = (x: number, y: number) => [press(x, y), release(x, y)];
const pulled = (...inputs: Parameters<typeof drive>[2]) =>
  drive(tape, driven(tape, yard), [...tap(0, 0), ...inputs]);

describe('the tape', () => {
  it('[E18] reads what is typed between the two marks that were tapped', () => {
    const done = pulled(...tap(360, 240), typed(430), finish);
    expect(done.labels).toEqual(['Tape']);
    expect(Object.values(done.site.observations)).toEqual([
      {
        kind: 'tape',
        from: 'mark:house1',
        to: 'mark:house3',
        length: 430,
        trust: null,
        label: '',
      },
    ]);
    // the mark that it is pulled to goes along the tape, and no other
    const { 'mark:house3': pulledMark, ...rest } = done.site.marks;
    expect(distance(done.site.marks['mark:house1']!, pulledMark!)).toBeCloseTo(430, 9);
    for (const [id, mark] of Object.entries(rest)) expect(mark).toBe(yard.marks[id as MarkId]);
    expect(done.selection).toEqual({ kind: 'mark', id: 'mark:house3' });
    expect(openDocument(done.site).ok).toBe(true);
  });

  it('[E18] asks for the two marks by their names, and offers what the drawing has', () => {
    const asking = pulled(...tap(840, 0));
    expect(tape.asked?.(asking.state, deskFor(asking.site))).toMatchObject({
      what: 'length',
      offered: 840,
      words: { field: 'House corner 1 to mark fence2' },
    });
    expect(tape.prompt(asking.state, deskFor(asking.site))).toBe(
      `Type what the tape reads and press Enter; the drawing has 70'-0"`,
    );
  });

  it('[E18] shows the yard as it would stand while it is typed, and drops that on leave', () => {
    const typing = pulled(...tap(360, 240), typed(430));
    expect(Object.values(typing.draft?.observations ?? {})).toMatchObject([{ length: 430 }]);
    expect(typing.site).toBe(yard);
    // the first figure of a longer one does not throw the yard about
    expect(drive(tape, typing, [typed(4)]).draft).toBeNull();
    const left = drive(tape, typing, [{ do: 'leave' }]);
    expect(left.draft).toBeNull();
    expect(left.site).toBe(yard);
  });

  it('[E18] reads anew where there is a tape already', () => {
    const first = pulled(...tap(360, 240), typed(430), finish);
    const asking = drive(tape, first, [...tap(360, 240), ...tap(0, 0)]);
    expect(tape.asked?.(asking.state, deskFor(asking.site))?.offered).toBe(430);
    const again = drive(tape, asking, [typed(432), finish]);
    expect(Object.values(again.site.observations)).toMatchObject([{ length: 432 }]);
  });

  it('[E19] pulled to open ground it sets a mark there', () => {
    const done = pulled(...tap(100, -300), typed(320), finish);
    expect(Object.keys(done.site.marks)).toHaveLength(Object.keys(yard.marks).length + 1);
    expect(done.site.marks['mark:1']).toMatchObject({ x: 100, y: -300 });
    expect(Object.values(done.site.observations)).toMatchObject([
      { kind: 'tape', from: 'mark:house1', to: 'mark:1', length: 320 },
    ]);
  });

  it('[E19] pulled to a wall it reads square off it, on the side of the mark', () => {
    const done = drive(tape, driven(tape, yard), [
      ...tap(840, -480),
      ...tap(180, 0),
      typed(490),
      finish,
    ]);
    expect(done.labels).toEqual(['Tape off a wall']);
    expect(Object.values(done.site.observations)).toMatchObject([
      { kind: 'offset', at: 'mark:fence3', from: 'mark:house1', to: 'mark:house2', distance: -490 },
    ]);
  });

  it('[E18] needs a mark to be hooked to, and another to be pulled to', () => {
    const none = drive(tape, driven(tape, yard), [press(100, -300)]);
    expect(none.say).toBe('Tap a mark to hook the tape to: a corner, a pin, the end of a fence');
    const same = drive(tape, driven(tape, yard), [...tap(0, 0), press(0, 0)]);
    expect(same.say).toBe('The tape is hooked there: expected another mark to pull it to');
    const zero = pulled(...tap(360, 240), typed(0));
    expect(zero.say).toBe(`Length 0": expected more than 0`);
  });
});

describe('a tape that lies on the ground', () => {
  const taped = pulled(...tap(360, 240), typed(430), finish).site;

  it('[E30] is selected by a tap where nothing else is, and erased', () => {
    const chosen = drive(select, driven(select, taped), tap(144, 96));
    expect(chosen.selection).toEqual({ kind: 'tape', id: 'observation:1' });
    const erased = drive(select, chosen, [{ do: 'erase' }]);
    expect(erased.labels).toEqual(['Erase tape']);
    expect(erased.site.observations).toEqual({});
  });

  it('[E30] moves with its marks, not by itself', () => {
    const held = drive(select, driven(select, taped), [press(144, 96), move(200, 40)]);
    expect(held.say).toBe('A tape moves with its marks: drag one of those');
    expect(held.site).toBe(taped);
  });
});
