import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { startLine } from '../../src/site/edits/startLine.ts';
import { setHook } from '../../src/site/edits/setHook.ts';
import type { LineId } from '../../src/site/ids.ts';
import { openSite } from '../../src/site/openSite.ts';
import type { Site } from '../../src/site/site.ts';
import { gateReading, moveToReading } from '../../src/screens/yard/tape/gateReading.ts';
import { tapeLine } from '../../src/screens/yard/tape/tapeLine.ts';
import type { Selection } from '../../src/store/selection.ts';
import type { Lit } from '../../src/store/session.ts';
import { inches } from '../../src/units/inches.ts';

const file = join(import.meta.dirname, '../../sample-sites/back-yard.site.json');
const opened = openSite(readFileSync(file, 'utf8'));
if (!opened.ok) throw new Error(opened.reason);
const yard: Site = opened.value;
const [line, walk] = ['line:yard', 'gate:walk'] as const;

const readingIn = (site: Site) => {
  const laid = layOutSite(site).lines[line];
  if (laid === undefined) throw new Error('the sample has lost its line');
  return gateReading(site, laid, walk);
};

describe('the reading of a gate on the tape', () => {
  it('is what the tape shows at the post nearer to the hook', () => {
    // anchored from the start of its leg by its near post's centre, which is where the tape hooks
    expect(readingIn(yard)?.reading).toBe(84);
    const other = readingIn(setHook(yard, line, 'end'));
    expect(other?.reading).toBeGreaterThan(84);
  });

  it('can be typed: the gate goes there, from either hook, and stays anchored as it was', () => {
    const hooks = fc.constantFrom('start' as const, 'end' as const);
    fc.assert(
      fc.property(hooks, fc.integer({ min: 64, max: 150 }), (hook, wanted) => {
        const hooked = setHook(yard, line, hook);
        const before = readingIn(hooked);
        if (before === null) throw new Error('the sample has lost its gate');
        const moved = moveToReading(hooked, walk, before, inches(wanted));
        expect(readingIn(moved)?.reading).toBe(wanted);
        expect(moved.gates[walk]?.anchor.from).toBe('start');
      }),
      { numRuns: 20 },
    );
  });

  it('refuses a reading that the tape does not have', () => {
    const before = readingIn(yard);
    if (before === null) throw new Error('the sample has lost its gate');
    expect(() => moveToReading(yard, walk, before, inches(-1))).toThrow(RangeError);
    expect(() => moveToReading(yard, walk, before, inches(9999))).toThrow(RangeError);
  });
});

describe('the line that the tape shows', () => {
  const none = { posts: new Map() };
  const shows = (site: Site, selection: Selection, lit: Lit | null = null) =>
    tapeLine(site, none, { selection, lit });

  it('is the one that the selection is on, else the first', () => {
    expect(shows(yard, { kind: 'gate', id: walk })).toBe(line);
    expect(shows(yard, null)).toBe(line);
    expect(shows({ ...yard, lines: {} }, null)).toBeNull();
    const end = Object.values(yard.lines[line]?.path ?? {})[0]?.mark;
    if (end === undefined) throw new Error('the sample has lost its marks');
    expect(shows(yard, { kind: 'mark', id: end })).toBe(line);
  });

  it('is the one with the most of what is lit up, while nothing is selected', () => {
    const more = startLine(yard, yard.lines[line]!.spec, { x: 5000, y: 5000 });
    const other = Object.keys(more.lines).find((id) => id !== line) as LineId;
    const lit = { item: 'Fabric', posts: [], lines: [other], gates: [] };
    expect(shows(more, null, lit)).toBe(other);
    expect(shows(more, { kind: 'gate', id: walk }, lit)).toBe(line);
    expect(shows(more, null, { ...lit, lines: [], gates: [walk] })).toBe(line);
  });
});
