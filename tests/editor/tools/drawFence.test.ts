import { describe, expect, it } from 'vitest';
import { drawFence } from '../../../src/editor/tools/drawFence/drawFence.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import type { LineId, SpecId } from '../../../src/site/ids.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { verticesOf } from '../../../src/site/pathOrder.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { samplePlans } from '../../store/samplePlans.ts';
import { namedSite } from '../../store/namedSite.ts';
import { deskFor, drive, driven, move, press, typed } from '../drive.ts';
import { yard } from '../yard.ts';

const empty = namedSite('Empty');
const start = (site: Site) => driven(drawFence, site);

const cornersOf = (site: Site, id: LineId = 'line:1') =>
  verticesOf(site.lines[id]?.path ?? {}).map(({ mark }) => {
    const { x, y } = site.marks[mark] ?? { x: Number.NaN, y: Number.NaN };
    return [x, y];
  });

describe('drawFence', () => {
  it('[E6] idle, started, drawing: each press from the second commits one leg', () => {
    const one = drive(drawFence, start(empty), [press(0, 0)]);
    expect([one.state.is, one.labels]).toEqual(['started', []]);
    const two = drive(drawFence, one, [move(100, 3), press(240, 2)]);
    expect([two.state.is, two.labels]).toEqual(['drawing', ['Draw fence']]);
    expect(cornersOf(two.site)).toEqual([
      [0, 0],
      [240, 0],
    ]);
    const three = drive(drawFence, two, [press(238, -120), { do: 'finish' }]);
    expect([three.state.is, three.labels]).toEqual(['idle', ['Draw fence', 'Draw leg']]);
    expect(cornersOf(three.site)).toEqual([
      [0, 0],
      [240, 0],
      [240, -120],
    ]);
    expect(three.selection).toEqual({ kind: 'line', id: 'line:1' });
    expect(Object.keys(three.site.specs)).toEqual(['spec:invented']);
    expect(openDocument(three.site).ok).toBe(true);
  });

  it('[E6] one mark alone is no fence, and finishing says so', () => {
    const one = drive(drawFence, start(empty), [press(0, 0), { do: 'finish' }]);
    expect([one.state.is, one.labels]).toEqual(['idle', []]);
    expect(one.say).toBe('Nothing is drawn: a fence needs two marks');
  });

  it('[E6] says nothing of where the hand is drawn to while it rests on the mark it has set', () => {
    const words = (at: ReturnType<typeof start>) =>
      drawFence
        .preview(at.state, deskFor(at.site))
        .flatMap((one) => (one.kind === 'text' ? [one.text] : []));
    const set = drive(drawFence, start(empty), [press(0, 0), press(240, 2)]);
    expect(words(set)).toEqual([]);
    expect(words(drive(drawFence, set, [move(241, -90)]))).toContain('square to the last leg');
    expect(words(drive(drawFence, set, [{ do: 'finish' }]))).toEqual([]);
  });

  it('[E7] a typed length and bearing hold for the next leg and no longer', () => {
    const { site, state } = drive(drawFence, start(empty), [
      press(0, 0),
      typed(150.5),
      press(700, 4),
      typed(96, 90),
      press(-50, -50),
      press(60, 97),
    ]);
    expect(cornersOf(site)).toEqual([
      [0, 0],
      [150.5, 0],
      [150.5, 96],
      [60, 96],
    ]);
    expect(state.typed).toEqual({ length: null, bearing: null });
  });

  it('[E7] a typed length is over 0 and up to a mile, else one line and the same state', () => {
    const one = drive(drawFence, start(empty), [press(0, 0), typed(24)]);
    const lines = [0, -3, 63_361, Number.NaN, Number.POSITIVE_INFINITY].map((length) => {
      const next = drive(drawFence, one, [typed(length)]);
      expect(next.state).toEqual(one.state);
      return next.say;
    });
    expect(lines).toEqual([
      'Length 0": expected more than 0',
      'Length -3": expected more than 0',
      `Length 5280'-1": expected at most a mile (5280'-0")`,
      'Length NaN: expected more than 0',
      `Length Infinity: expected at most a mile (5280'-0")`,
    ]);
    expect(drive(drawFence, one, [typed(63_360)]).say).toBe('');
    expect(drive(drawFence, start(empty), [typed(24)]).state.typed.length).toBeNull();
  });

  it('[E6] closes by its first mark or by the word, and not with fewer than three marks', () => {
    const three = [press(0, 0), press(240, 0), press(240, -240)];
    const byMark = drive(drawFence, start(empty), [...three, press(3, -2)]);
    const byWord = drive(drawFence, start(empty), [...three, { do: 'close' }]);
    for (const { site, state, labels } of [byMark, byWord]) {
      expect(state.is).toBe('idle');
      expect(labels.at(-1)).toBe('Close fence line');
      expect(site.lines['line:1']?.closed).toBe(true);
      expect(cornersOf(site)).toHaveLength(3);
      expect(Object.keys(site.marks)).toHaveLength(3);
    }
    const two = drive(drawFence, start(empty), three.slice(0, 2));
    for (const input of [{ do: 'close' } as const, press(0, 0)]) {
      const refused = drive(drawFence, two, [input]);
      expect(refused.say).toBe('A fence line needs three marks before it can be closed');
      expect([refused.site, refused.state.is]).toEqual([two.site, 'drawing']);
    }
  });

  it('[E6] takes marks back one by one, at last the start itself', () => {
    const three = drive(drawFence, start(empty), [press(0, 0), press(240, 0), press(240, -240)]);
    const path = [1, 2, 3].map((count) => {
      const inputs = Array.from({ length: count }, () => ({ do: 'back' }) as const);
      const { state, site } = drive(drawFence, three, inputs);
      return [state.is, Object.keys(site.lines).length, Object.keys(site.marks).length];
    });
    expect(path).toEqual([
      ['drawing', 1, 2],
      ['started', 0, 0],
      ['idle', 0, 0],
    ]);
    const again = drive(drawFence, three, [{ do: 'back' }, { do: 'back' }, press(0, 120)]);
    expect(cornersOf(again.site)).toEqual([
      [0, 0],
      [0, 120],
    ]);
  });

  it('[E6] leaving keeps what was committed; another tool in hand loses nothing', () => {
    const two = drive(drawFence, start(empty), [press(0, 0), press(240, 0)]);
    const left = drive(drawFence, two, [{ do: 'leave' }]);
    expect([left.state.is, left.site]).toEqual(['idle', two.site]);
    const rested = { ...two, state: drawFence.rest(two.state) };
    const on = drive(drawFence, rested, [press(240, 120)]);
    expect(cornersOf(on.site)).toHaveLength(3);
    const begun = drive(drawFence, start(empty), [press(0, 0)]);
    const kept = drive(drawFence, { ...begun, state: drawFence.rest(begun.state) }, [press(9, 96)]);
    expect(cornersOf(kept.site)).toEqual([
      [0, 0],
      [9, 96],
    ]);
  });

  it('[E6] starting at an open end draws that line on, from whichever end', () => {
    const atEnd = drive(drawFence, start(yard), [press(838, -478), press(300, -478)]);
    expect(Object.keys(atEnd.site.lines)).toEqual(['line:fence']);
    expect(cornersOf(atEnd.site, 'line:fence').at(-1)).toEqual([300, -480]);
    const drawn = drive(drawFence, start(empty), [press(0, 0), press(240, 0), { do: 'finish' }]);
    const atStart = drive(drawFence, drawn, [press(0, 0), press(2, 120)]);
    expect(cornersOf(atStart.site)).toEqual([
      [0, 120],
      [0, 0],
      [240, 0],
    ]);
    const measured = drive(drawFence, drawn, [press(0, 0), typed(60, 90), press(9, 9)]);
    expect(cornersOf(measured.site)[0]).toEqual([0, 60]);
    const back = drive(drawFence, atStart, [{ do: 'back' }]);
    expect(cornersOf(back.site)).toEqual(cornersOf(drawn.site));
  });

  it('[E6] at an open end of fence of another kind a line of its own starts', () => {
    const kind = samplePlans.fence.spec.infill.kind;
    const drawn = drive(drawFence, start(empty), [press(0, 0), press(240, 0), { do: 'finish' }]);
    const { specs } = drawn.site;
    const [id] = Object.keys(specs) as SpecId[];
    expect(specs[id!]?.infill.kind).toBe(kind);
    const panels = changeSpec(drawn.site, id!, {
      infill: { kind: 'panels', panel: '', width: inches(96), last: 'cut' },
    });
    const on = drive(drawFence, start(panels), [press(240, 0), press(240, -200)]);
    expect(Object.keys(on.site.lines)).toEqual(['line:1', 'line:2']);
    expect(cornersOf(on.site, 'line:2')[0]).toEqual([240, 0]);
  });

  it('[E6] where two open ends meet, a line of its own starts', () => {
    const two = drive(drawFence, start(empty), [
      press(0, 0),
      press(240, 0),
      { do: 'finish' },
      press(400, 300),
      press(240, 0),
      { do: 'finish' },
    ]);
    const third = drive(drawFence, two, [press(240, 0), press(240, -200)]);
    expect(Object.keys(third.site.lines)).toEqual(['line:1', 'line:2', 'line:3']);
  });

  it('[E6] touching another leg splits it, and both share the mark', () => {
    for (const inputs of [
      [press(600, 4), press(600, 300)],
      [press(600, 300), press(602, 3)],
    ]) {
      const { site } = drive(drawFence, start(yard), inputs);
      const split = legsOf(site.lines['line:fence'] ?? { path: {}, closed: false });
      expect(split).toHaveLength(3);
      const shared = verticesOf(site.lines['line:1']?.path ?? {}).map(({ mark }) => mark);
      expect(shared).toContain(split[0]?.end);
      expect(site.marks[split[0]?.end ?? 'mark:none']).toMatchObject({ x: 600, y: 0 });
      expect(openDocument(site).ok).toBe(true);
    }
  });

  it('[E6] a wall is stood on, not split; its corner is shared', () => {
    const wall = drive(drawFence, start(yard), [press(-3, 60), press(-300, 62)]).site;
    expect(cornersOf(wall)).toEqual([
      [0, 60],
      [-300, 60],
    ]);
    expect(wall.features).toBe(yard.features);
    const corner = drive(drawFence, start(yard), [press(2, 2), press(-300, 2)]).site;
    expect(verticesOf(corner.lines['line:1']?.path ?? {})[0]?.mark).toBe('mark:house1');
  });

  it('[E6] a tap twice is no leg', () => {
    const two = drive(drawFence, start(empty), [press(0, 0), press(3, 1)]);
    expect(two.say).toBe('That is where the last mark is: expected one farther on');
    expect([two.state.is, two.labels]).toEqual(['started', []]);
  });

  it('[E6] follows undo and redo: the state is what the document allows', () => {
    const one = drive(drawFence, start(empty), [press(0, 0), press(240, 0)]);
    const two = drive(drawFence, one, [press(240, -240)]);
    const undone = drive(drawFence, { ...two, site: one.site }, [press(240, 96)]);
    expect(cornersOf(undone.site)).toEqual([
      [0, 0],
      [240, 0],
      [240, 96],
    ]);
    const gone = drive(drawFence, { ...two, site: empty }, [move(5, 5)]);
    expect(gone.state.is).toBe('started');
    const redone = drive(drawFence, { ...gone, site: two.site }, [press(-3, 96)]);
    expect(Object.keys(redone.site.lines)).toEqual(['line:1']);
    expect(cornersOf(redone.site)[0]).toEqual([0, 96]);
  });

  it('[E6] says what comes next and shows the leg with its length', () => {
    const path = [drive(drawFence, start(empty), [])];
    for (const input of [press(0, 0), typed(150), press(500, 0), move(150, 60)]) {
      const last = path.at(-1);
      if (last) path.push(drive(drawFence, last, [input]));
    }
    expect(path.map(({ state, site }) => drawFence.prompt(state, deskFor(site)))).toEqual([
      'Tap where the fence starts',
      'Tap the next mark, or type how far it is',
      `Next leg 12'-6": tap the way it goes`,
      'Tap the next mark, type how far it is, or finish',
      'Tap the next mark, type how far it is, or finish',
    ]);
    const end = path.at(-1);
    const shown = end ? drawFence.preview(end.state, deskFor(end.site)) : [];
    const texts = shown.flatMap((one) => (one.kind === 'text' ? [one.text] : []));
    expect(texts).toEqual(['square to the last leg', `5'-0"`]);
    expect(shown.some(({ kind }) => kind === 'fence')).toBe(true);
  });
});
