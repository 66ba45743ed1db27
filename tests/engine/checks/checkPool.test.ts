import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { changeGate } from '../../../src/site/edits/changeGate.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import { setGuards } from '../../../src/site/edits/setGuards.ts';
import type { LineId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

/** A fence along the south of a pool, with a gate that opens to the left, where the pool lies. */
const drawn = addFeature(
  gateOn(
    fence(bare, [
      [0, 0],
      [1200, 0],
    ]),
    0,
    { from: 'middle', offset: 0 },
  ),
  { kind: 'pool', label: 'Pool' },
  [
    { x: 400, y: 200 },
    { x: 800, y: 200 },
    { x: 800, y: 500 },
    { x: 400, y: 500 },
  ],
);
const line = Object.keys(drawn.lines)[0] as LineId;
const yard = changeGate(
  changeSpec(setGuards(drawn, line, 'pool'), 'spec:six', { mesh: inches(2) }),
  firstGate(drawn),
  { latchHeight: inches(52), bottom: inches(2) },
);

const found = (site: Site) => {
  const rules = /pool/;
  return layOutSite(site).flags.filter(({ rule }) => rules.test(rule));
};

describe('the barrier round a pool', () => {
  it('[F33] 2 in mesh, a latch at 50 in and a gate that swings in are each told once, at their place, with who says so', () => {
    const flags = found(yard);
    expect(flags.map(({ rule, place }) => [rule, place.kind])).toEqual([
      ['gate opens to the pool', 'gate'],
      ['latch of a pool gate', 'gate'],
      ['pool gate without a closer', 'gate'],
      ['mesh of a pool barrier', 'line'],
    ]);
    const said = new Map(flags.map(({ rule, message }) => [rule, message]));
    const mesh = said.get('mesh of a pool barrier');
    // both published limits where they disagree
    expect(mesh).toContain('CPSC Publication 362');
    expect(mesh).toContain('ISPSC 305.2; from memory');
    expect(said.get('latch of a pool gate')).toMatch(/4'-2" over the bottom .* lower than 4'-6"/);
    expect(said.get('gate opens to the pool')).toContain('CPSC Publication 362');
    expect(flags.every(({ level }) => level === 'settle')).toBe(true);
  });

  it('[F33] turned away, latched high, closed and meshed fine, nothing is left to say', () => {
    const away = setGateOpens(yard, firstGate(yard), 'right');
    const latched = changeGate(away, firstGate(yard), { latchHeight: inches(58) });
    const fine = changeSpec(latched, 'spec:six', { mesh: inches(1.25) });
    expect(found(fine).map(({ rule }) => rule)).toEqual(['pool gate without a closer']);
  });

  it('[F33] a fence that guards no pool, and low fence with a wide gap that does', () => {
    expect(found(setGuards(yard, line, null))).toEqual([]);
    const low = changeSpec(yard, 'spec:six', { fabricHeight: inches(42), gapUnder: inches(5) });
    const rules = found(low).map(({ rule }) => rule);
    expect(rules).toContain('pool barrier low');
    expect(rules).toContain('gap under a pool barrier');
  });

  it('[F33] a gate that hangs high or reaches less high is told, at the gate', () => {
    const hung = (bottom: number, height: number) =>
      found({
        ...yard,
        gates: Object.fromEntries(
          Object.entries(changeGate(yard, firstGate(yard), { bottom: inches(bottom) }).gates).map(
            ([id, gate]) => [
              id,
              {
                ...gate,
                leaves: Object.fromEntries(
                  Object.entries(gate.leaves).map(([leaf, one]) => [
                    leaf,
                    { ...one, height: inches(height) },
                  ]),
                ),
              },
            ],
          ),
        ),
      }).flatMap(({ rule, place, message }) =>
        place.kind === 'gate' && /low|gap/.test(rule) ? [message] : [],
      );
    expect(hung(2, 46)).toEqual([]);
    expect(hung(2, 45)).toEqual([expect.stringMatching(/reaches 3'-11" over.*4'-0" at least/)]);
    expect(hung(3, 46)).toEqual([expect.stringMatching(/hangs 3" over.* 2" \(IRC.* 4" \(CPSC/)]);
  });

  it('[F33] slats that close no more than wires do not excuse the mesh', () => {
    const rules = (solid: number | null) =>
      found(changeSpec(yard, 'spec:six', { solid })).map(({ rule }) => rule);
    expect(rules(0)).toEqual(rules(null));
    expect(rules(0.6)).not.toContain('mesh of a pool barrier');
  });

  it('[F33] rails nearer than 45 in to each other can be climbed: told with how far apart they are', () => {
    // Fairfax MN 211-1 and Rutherford County TN: horizontals under 45 in apart on the pool's side
    const rail = { label: 'rail', od: inches(1.66), wall: inches(0.14) };
    const railed = (fields: Parameters<typeof changeSpec>[2]) =>
      found(changeSpec(yard, 'spec:six', fields)).find(
        ({ rule }) => rule === 'rails of a pool barrier',
      )?.message;
    expect(railed({ bottomRail: rail })).toBeUndefined();
    expect(railed({ middleRail: rail })).toMatch(/rails 3'-0" apart.*nearer than 3'-9"/);
    expect(railed({ bottomRail: rail, fabricHeight: inches(44) })).toMatch(/rails 3'-8" apart/);
  });

  it('[F34] a narrow gate for fire engines and a motor are told', () => {
    const told = (fields: Parameters<typeof changeGate>[2]) =>
      layOutSite(changeGate(setGuards(yard, line, null), firstGate(yard), fields)).flags.map(
        ({ rule, level }) => `${level} ${rule}`,
      );
    expect(told({ route: 'fire' })).toContain('settle too narrow for fire engines');
    expect(told({ powered: true })).toContain('caution powered gate');
  });
});
