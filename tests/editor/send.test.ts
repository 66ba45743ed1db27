import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Input } from '../../src/editor/input.ts';
import { machine } from '../../src/editor/machine.ts';
import { createSend } from '../../src/editor/send.ts';
import type { Tool } from '../../src/editor/tool.ts';
import { toolbox } from '../../src/editor/toolbox.ts';
import { layOutFrom } from '../../src/engine/layOutFrom.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { openDocument } from '../../src/site/openDocument.ts';
import type { Site } from '../../src/site/site.ts';
import { rememberLayouts } from '../../src/store/derived.ts';
import { current } from '../../src/store/history.ts';
import { createSession } from '../../src/store/session.ts';
import { createSiteStore } from '../../src/store/siteStore.ts';
import { stands } from '../../src/store/stands.ts';
import { toolIds } from '../../src/store/toolId.ts';
import type { ToolId } from '../../src/store/toolId.ts';
import { inches } from '../../src/units/inches.ts';
import { radians } from '../../src/units/radians.ts';
import { namedSite } from '../store/namedSite.ts';
import { samplePlans } from '../store/samplePlans.ts';
import { move, press, release } from './drive.ts';
import { gatedYard } from './gatedYard.ts';
import { yard } from './yard.ts';

const bench = (first: Site, tool: ToolId = 'select') => {
  const site = createSiteStore(first);
  const session = createSession(samplePlans);
  session.setState({ tool });
  const layOut = rememberLayouts(layOutFrom);
  return { site, session, ...createSend({ site, session, layOut, tools: toolbox }) };
};

const shownBy = ({ site }: ReturnType<typeof bench>): Site => current(site.getState().history);

describe('send', () => {
  it('[E12] brings commit, selection and word of the tool in hand to the stores', () => {
    const on = bench(yard, 'fence');
    on.send(press(0, -600));
    expect(on.site.getState().history.past).toEqual([]);
    on.send(press(200, -600));
    expect(on.site.getState().history.present.label).toBe('Draw fence');
    expect(on.session.getState().selection).toEqual({ kind: 'line', id: 'line:1' });
    on.send({ do: 'type', length: inches(-1), bearing: null });
    expect(on.session.getState().say).toBe('Length -1": expected more than 0');
    on.send(move(300, -600));
    expect(on.session.getState().say).toBe('Length -1": expected more than 0');
    on.send(press(300, -600));
    expect(on.session.getState().say).toBe('');
    on.send(press(300, -600));
    on.send(release(300, -600));
    expect(on.session.getState().say).toMatch(/^That is where the last mark is/);
  });

  it('[E11] a leaf that was measured is one leaf: the next gate has its width copied', () => {
    const on = bench(yard, 'gate');
    on.send(press(600, 3));
    on.send(press(840, -240));
    const leaves = Object.values(shownBy(on).gates).flatMap((gate) => Object.values(gate.leaves));
    expect(leaves.map(({ widths, from }) => [widths.top, from])).toEqual([
      [42, 'measured'],
      [42, 'copied'],
    ]);
  });

  it('[E12] shows what the tool in hand would do', () => {
    const on = bench(yard, 'gate');
    expect(on.hand.getState().preview).toEqual([]);
    on.send(move(600, 3));
    expect(Object.keys(shownBy(on).gates)).toEqual(['gate:1']);
    expect(on.hand.getState().prompt).toBe(`Opening 3'-8 1/2": tap to set the gate`);
    expect(on.hand.getState().preview).not.toEqual([]);
  });

  it('[E12] another tool drops the draft and keeps the line that is being drawn', () => {
    const on = bench(yard, 'gate');
    on.send(move(600, 3));
    on.session.setState({ tool: 'fence' });
    expect(shownBy(on)).toBe(yard);
    on.send(press(0, -600));
    on.send(press(200, -600));
    on.session.setState({ tool: 'tree' });
    on.send(press(-300, 300));
    on.session.setState({ tool: 'fence' });
    expect(on.hand.getState().prompt).toBe('Tap the next mark, type how far it is, or finish');
    on.send(press(200, -700));
    const drawn = on.site.getState().history.present.site.lines['line:1'];
    expect(Object.keys(drawn?.path ?? {})).toHaveLength(3);
  });

  it('[E12] a tool that is put aside forgets what was typed, not where it was', () => {
    const on = bench(namedSite('Empty'), 'fence');
    on.send(press(0, 0));
    on.send({ do: 'type', length: inches(24), bearing: null });
    on.session.setState({ tool: 'select' });
    on.session.setState({ tool: 'fence' });
    on.send(press(300, 0));
    expect(on.site.getState().history.present.site.marks['mark:2']).toMatchObject({ x: 300 });
  });

  it('[E12] leaving drops the draft of a tool that says nothing of it', () => {
    const drafting: Tool<null> = {
      idle: null,
      on: (state, input) =>
        input.do === 'leave' ? { state } : { state, draft: namedSite('Draft') },
      preview: () => [],
      prompt: () => 'Draft',
      rest: () => null,
    };
    const site = createSiteStore(yard);
    const session = createSession(samplePlans);
    const tools = [{ id: 'select', label: 'Draft', key: 'd', machine: machine(drafting) }] as const;
    const { send } = createSend({ site, session, layOut: layOutSite, tools });
    send(move(0, 0));
    expect(current(site.getState().history).job.name).toBe('Draft');
    send({ do: 'leave' });
    expect(current(site.getState().history)).toBe(yard);
  });

  it('[E12] undo in the middle of a line goes back leg by leg, and on from there', () => {
    const on = bench(namedSite('Empty'), 'fence');
    for (const x of [0, 100, 200, 300]) on.send(press(x, 0));
    on.site.getState().undo();
    on.site.getState().undo();
    on.send(press(100, 90));
    const { site, label } = on.site.getState().history.present;
    expect([label, Object.keys(site.marks).length]).toEqual(['Draw leg', 3]);
  });

  it('[E12] leaving drops the draft; what is gone is not selected', () => {
    const on = bench(yard);
    on.send(press(838, -478));
    on.send(move(700, -600));
    expect(shownBy(on)).not.toBe(yard);
    on.send({ do: 'leave' });
    expect(shownBy(on)).toBe(yard);
    on.send({ do: 'erase' });
    expect(on.session.getState().selection).toBeNull();
    on.site.getState().undo();
    on.send(press(838, -478));
    on.send(release(838, -478));
    on.site.getState().load(namedSite('Other'), 'Open other');
    expect(on.session.getState().selection).toBeNull();
  });

  it('[E12] an edit that refuses is told in its line and changes nothing', () => {
    const on = bench(namedSite('Empty'), 'fence');
    on.send(press(0, 0));
    on.send(press(7e5, 0));
    expect(on.site.getState().history.past).toEqual([]);
    expect(on.session.getState().say).toMatch(/marks.*633600/);
  });

  it('[E12] lets go of the stores', () => {
    const on = bench(yard, 'gate');
    on.stop();
    const before = on.hand.getState();
    on.session.setState({ tool: 'tree' });
    expect(on.hand.getState()).toBe(before);
  });
});

const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const spot = fc.record({
  at: fc.oneof(
    fc.record({ x: number(-700, 1000), y: number(-1000, 700) }),
    // where things are: marks, legs and walls are met again and again
    fc.constantFrom(
      ...Object.values(yard.marks).map(({ x, y }) => ({ x, y })),
      { x: 600, y: 0 },
      { x: 700, y: 0 },
      { x: 840, y: -200 },
      { x: 180, y: 120 },
    ),
  ),
  reach: number(0.1, 40).map(inches),
  free: fc.boolean(),
});

type Deed =
  | { readonly do: 'take'; readonly tool: ToolId }
  | { readonly do: 'undo' }
  | { readonly do: 'redo' };

const step: fc.Arbitrary<Input | Deed> = fc.oneof(
  { weight: 6, arbitrary: spot.map((at): Input => ({ do: 'press', ...at })) },
  { weight: 4, arbitrary: spot.map((at): Input => ({ do: 'move', ...at })) },
  { weight: 3, arbitrary: spot.map((at): Input => ({ do: 'release', ...at })) },
  {
    weight: 2,
    arbitrary: fc
      .record({
        length: fc.option(fc.oneof(number(-10, 2000), fc.constantFrom(0, 7e4, Number.NaN))),
        bearing: fc.option(number(-4, 4)),
      })
      .map(({ length, bearing }): Input => ({
        do: 'type',
        length: length === null ? null : inches(length),
        bearing: bearing === null ? null : radians(bearing),
      })),
  },
  fc
    .record({ x: number(-50, 50), y: number(-50, 50) })
    .map(({ x, y }): Input => ({ do: 'nudge', x: inches(x), y: inches(y) })),
  {
    weight: 3,
    arbitrary: fc
      .constantFrom('finish', 'close', 'back', 'leave', 'erase')
      .map((deed): Input => ({ do: deed })),
  },
  {
    weight: 3,
    arbitrary: fc.constantFrom(...toolIds).map((tool): Deed => ({ do: 'take', tool })),
  },
  fc.constantFrom<Deed>({ do: 'undo' }, { do: 'redo' }),
);

describe('send, whatever comes', () => {
  it('[E13] no input throws, and every committed site opens', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(yard, gatedYard({ from: 'middle', offset: 0 }), namedSite('Empty')),
        fc.array(step, { minLength: 1, maxLength: 40 }),
        (first, steps) => {
          const on = bench(first);
          const known = new Set<Site>([first]);
          for (const one of steps) {
            if (one.do === 'take') on.session.setState({ tool: one.tool });
            else if (one.do === 'undo') on.site.getState().undo();
            else if (one.do === 'redo') on.site.getState().redo();
            else on.send(one);
            const { present } = on.site.getState().history;
            expect(on.hand.getState().prompt).not.toBe('');
            expect(on.session.getState().say).not.toMatch(/\n/);
            const shown = shownBy(on);
            const { posts } = layOutSite(shown);
            expect(stands(shown, on.session.getState().selection, posts)).toBe(true);
            if (known.has(present.site)) continue;
            known.add(present.site);
            expect(openDocument(present.site)).toMatchObject({ ok: true });
            expect(present.label).not.toBe('');
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  it('[E13] undoing all that was done gives the first document, redoing it the last', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 40 }), (steps) => {
        const on = bench(yard, 'fence');
        for (const one of steps) {
          if (one.do === 'take') on.session.setState({ tool: one.tool });
          else if (one.do !== 'undo' && one.do !== 'redo') on.send(one);
        }
        const last = on.site.getState().history;
        for (let n = 0; n < last.past.length; n += 1) on.site.getState().undo();
        expect(on.site.getState().history.present.site).toBe(yard);
        for (let n = 0; n < last.past.length; n += 1) on.site.getState().redo();
        expect(on.site.getState().history.present.site).toBe(last.present.site);
      }),
      { numRuns: 60 },
    );
  });
});
