import { describe, expect, it } from 'vitest';
import { hangingLine } from '../../../../src/drawing/sheet/sections/hangingLine.ts';
import { gateLines } from '../../../../src/drawing/sheet/sections/gateLines.ts';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import type { Site } from '../../../../src/site/site.ts';
import { hangingNotes } from '../../../../src/trade/hangingNotes.ts';
import { receiverFor } from '../../../../src/trade/receivers.ts';
import { inches } from '../../../../src/units/inches.ts';
import { firstGate } from '../../../engine/plainYard.ts';
import { cantilever, centreStop, gap, swing, wayYard } from '../../../engine/wayYard.ts';

const said = (site: Site): string => {
  const gate = layOutSite(site).gates[firstGate(site)];
  if (gate === undefined) throw new Error('no gate');
  return [...gateLines(gate, site), hangingLine(gate, site)].join('\n');
};

const notes = (text: string): string[] =>
  hangingNotes.map((note) => note.text).filter((note) => text.includes(note));
const countFor = (...keys: string[]): number =>
  hangingNotes.filter((note) => keys.includes(note.for)).length;

describe('gateLines', () => {
  // two hinge sets, bolts one way, tops level, bottoms clear, rod rests above ground, look along
  // both leaves before the receiver is made: common practice, no published source
  it('[D52] a gate gets the notes that are for it and no others', () => {
    const { source: _, ...receiver } = receiverFor('firm soil');
    const double = said(wayYard(swing, 2, { receiver, bottom: inches(2) }));
    expect(notes(double).length).toBe(countFor('leaf that turns', 'two leaves', 'drop rod'));
    expect(notes(said(wayYard(swing))).length).toBe(countFor('leaf that turns'));
    expect(notes(said(wayYard(cantilever))).length).toBe(countFor('leaf that rolls'));
    expect(notes(said(wayYard(gap)))).toEqual([]);
  });

  it('[D52] a receiver is told with its ground, its inside and how deep the rod goes', () => {
    const { source: _, ...receiver } = receiverFor('firm soil');
    const text = said(wayYard(swing, 2, { receiver, bottom: inches(2) }));
    expect(text).toMatch(
      /Receiver: driven pipe, its end flattened, in firm soil, .* inside for a rod of .*, 1'-4" deep\. The rod goes in 4" at most\./,
    );
  });

  it('[D52] each half of a pair against a stop has an opening of its own', () => {
    expect(said(wayYard(centreStop))).toContain(
      `From each post to the face of the stop hold 4'-0" (from 3'-11 7/8" to 4'-0 1/8") and 4'-0"`,
    );
  });

  it('[D52] a leaf that rolls says its tail, its rollers and the room it takes', () => {
    const text = said(wayYard(cantilever));
    expect(text).toContain(`reaches 5'-6" past the face of the first roller post`);
    expect(text).toContain(`Roller posts 4'-6" apart, 6" off the fence line.`);
    expect(said(wayYard(cantilever, 2))).toContain('each leaf reaches');
    // 48 - 2 1/8 + 66
    expect(text).toContain(`it takes 9'-3 7/8" along the fence`);
  });

  it('[D52] clear passage is not the opening', () => {
    expect(said(wayYard(swing))).toMatch(/Clear passage with the gate open: 3'-10 1\/[48]"/);
  });
});
