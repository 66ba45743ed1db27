import { expect, it } from 'vitest';
import { hit } from '../../../src/editor/hit.ts';
import { drawFence } from '../../../src/editor/tools/drawFence/drawFence.ts';
import { drawArea } from '../../../src/editor/tools/drawArea.ts';
import { placeMark } from '../../../src/editor/tools/placeMark.ts';
import { select } from '../../../src/editor/tools/select/select.ts';
import type { Input } from '../../../src/editor/input.ts';
import { setTape } from '../../../src/site/edits/setTape.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { verticesOf } from '../../../src/site/pathOrder.ts';
import type { Site } from '../../../src/site/site.ts';
import type { Selection } from '../../../src/store/selection.ts';
import { inches } from '../../../src/units/inches.ts';
import { deskFor, drive, driven, emptyLayout, move, press, release } from '../drive.ts';
import { yard } from '../yard.ts';

const tap = (x: number, y: number): Input[] => [press(x, y), release(x, y)];
const set = (...inputs: Input[]) => drive(placeMark, driven(placeMark, yard), inputs);
const free = (inputs: readonly Input[]): Input[] =>
  inputs.map((input) => ('at' in input ? { ...input, free: true } : input));

/** The yard with a mark on open ground. */
const staked = set(...tap(500, -700)).site;
const stake = { kind: 'mark', id: 'mark:1' } as const;

it('[E20] sets a mark where the hand lifts, one after the other, each with a name', () => {
  const one = set(press(480, -700), move(490, -700), release(500, -700));
  expect(one.site.marks['mark:1']).toEqual({ x: 500, y: -700, label: 'M1', fixed: false });
  expect([one.labels, one.selection]).toEqual([['Set mark'], stake]);
  const two = drive(placeMark, one, tap(600, -700));
  expect(two.site.marks['mark:2']).toMatchObject({ x: 600, y: -700, label: 'M2' });
  expect(openDocument(two.site).ok).toBe(true);
});

it('[E20] selects a mark that is there, also with snapping off', () => {
  const corner = { kind: 'mark', id: 'mark:house3' };
  const near = set(...tap(363, 242));
  expect([near.site, near.selection, near.labels]).toEqual([yard, corner, []]);
  const exact = set(...free(tap(360, 240)));
  expect([exact.site, exact.selection]).toEqual([yard, corner]);
  const beside = set(...free(tap(363, 242)));
  expect(beside.site.marks['mark:1']).toMatchObject({ x: 363, y: 242 });
  expect(placeMark.prompt(drive(placeMark, near, [press(363, 242)]).state, deskFor(yard))).toBe(
    'Let go to select this mark',
  );
});

it('[E20] stands on a leg or a side that it is drawn onto and leaves both as they are', () => {
  const fence = set(...tap(600, 4));
  expect(fence.site.marks['mark:1']).toMatchObject({ x: 600, y: 0 });
  expect([fence.site.lines, fence.site.features]).toEqual([yard.lines, yard.features]);
});

it('[E20] is given up before the hand lifts', () => {
  const left = set(press(480, -700), { do: 'leave' }, release(480, -700));
  expect([left.site, left.labels]).toEqual([yard, []]);
});

it('[E24] fence and ground that are drawn onto a lone mark stand on it', () => {
  const fenced = drive(drawFence, driven(drawFence, staked), [
    ...tap(502, -702),
    ...tap(500, -400),
  ]).site;
  const [, line] = Object.values(fenced.lines);
  expect(verticesOf(line?.path ?? {})[0]?.mark).toBe('mark:1');
  const paved = drive(drawArea('paving'), driven(drawArea('paving'), staked), [
    ...tap(498, -699),
    ...tap(500, -500),
    ...tap(300, -500),
    { do: 'finish' },
  ]).site;
  const [paving] = Object.values(paved.features).filter(({ kind }) => kind === 'paving');
  expect(verticesOf(paving !== undefined && 'path' in paving ? paving.path : {})[0]?.mark).toBe(
    'mark:1',
  );
});

const held = (site: Site, selection: Selection, inputs: readonly Input[]) =>
  drive(select, { ...driven(select, site), selection }, inputs);

it('[E24] a lone mark is met, dragged and nudged', () => {
  expect(hit(staked, emptyLayout, { at: { x: 503, y: -700 }, reach: inches(6) })).toEqual(stake);
  const moved = held(staked, null, [
    press(500, -700),
    move(530, -700),
    move(560, -720),
    release(560, -720),
  ]);
  expect(moved.site.marks['mark:1']).toMatchObject({ x: 560, y: -720, label: 'M1' });
  expect(moved.labels).toEqual(['Move mark']);
  const nudged = held(staked, stake, [{ do: 'nudge', x: inches(0), y: inches(12) }]);
  expect(nudged.site.marks['mark:1']).toMatchObject({ x: 500, y: -688 });
});

it('[E24] a lone mark that is dragged onto a corner, or a corner onto it, is one with it', () => {
  const taped = setTape(staked, 'mark:1', 'mark:house1', inches(900));
  const onto = held(taped, null, [
    press(500, -700),
    move(700, -600),
    move(838, -478),
    release(838, -478),
  ]).site;
  expect(onto.marks['mark:1']).toBeUndefined();
  expect(onto.marks['mark:fence3']).toMatchObject({ x: 840, y: -480, label: 'M1' });
  expect(Object.values(onto.observations)).toMatchObject([{ from: 'mark:fence3' }]);
  const back = held(taped, null, [
    press(840, -480),
    move(700, -600),
    move(501, -699),
    release(501, -699),
  ]).site;
  expect(back.marks['mark:fence3']).toBeUndefined();
  expect(verticesOf(back.lines['line:fence']?.path ?? {}).at(-1)?.mark).toBe('mark:1');
  expect(back.marks['mark:1']).toMatchObject({ x: 500, y: -700, label: 'M1' });
});

it('[E24] a lone mark that is erased goes with its name and its tapes', () => {
  const taped = setTape(staked, 'mark:1', 'mark:house1', inches(900));
  const gone = held(taped, stake, [{ do: 'erase' }]);
  expect(gone.site.marks).toEqual(yard.marks);
  expect(gone.site.observations).toEqual({});
  expect([gone.labels, gone.selection]).toEqual([['Erase mark'], null]);
});

it('[E24] a mark with a name that fence passes goes when it is erased, and stays when the fence is', () => {
  const fenced = drive(drawFence, driven(drawFence, staked), [
    ...tap(500, -700),
    ...tap(500, -400),
  ]).site;
  const [line] = Object.keys(fenced.lines).filter((id) => id !== 'line:fence');
  const marks = Object.keys(yard.marks);
  expect(Object.keys(held(fenced, stake, [{ do: 'erase' }]).site.marks)).toEqual(marks);
  const unfenced = held(fenced, { kind: 'line', id: line as 'line:1' }, [{ do: 'erase' }]).site;
  expect(Object.keys(unfenced.marks)).toEqual([...marks, 'mark:1']);
});
