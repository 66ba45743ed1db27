import { describe, expect, it } from 'vitest';
import { verdictWords } from '../../../src/drawing/opening/verdictWords.ts';
import { writer } from '../../../src/engine/set/setCase.ts';
import { setOf } from '../../../src/engine/set/setOf.ts';
import type { AsSet } from '../../../src/site/asSet.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { found, gateOf, leafIds, onlyGate, partOf } from '../../engine/set/setYard.ts';
import { centreStop, wayYard } from '../../engine/wayYard.ts';

// leaves 56 1/4, hinge sets from 1 3/4 to 2 planned at 2, drop-rod latch planned at 2: common
// practice, no published source
const hinge = partOf('hinge', [1.75, 2, 2]);
const double = (reach: number): Site =>
  gateOf([56.25, 56.25], { hinge, latch: partOf('drop rod', [2, 2, reach]) });

const said = (site: Site, asSet: AsSet) => {
  const set = setOf(site, { ...onlyGate(site), asSet });
  if (set === null) throw new Error('nothing was set');
  return verdictWords(set, writer({ site: { lengths: { system: 'inches', fraction: 16 } } }));
};

describe('verdictWords', () => {
  it('[D60] 119 may hold with a fork that catches to 2 1/2, and holds with one that reaches 3', () => {
    expect(said(double(2.5), found(119, null))).toEqual({
      level: 'ask',
      words: 'May hold: measure the hinges',
      gap: 'It leaves a gap of 2 1/2", by their spread from 2 1/2" to 3".',
    });
    expect(said(double(3), found(119, null))).toMatchObject({ level: 'holds', words: 'Holds' });
  });

  it('[D60] names the end that governs once both were measured', () => {
    const words = said(double(2.5), found(118.5, 117.25));
    // 112 1/2 of leaves, 3 1/2 of hinges at least and 2 of gap are 118: 3/4 is missing
    expect(words).toMatchObject({ level: 'stop', words: 'Too narrow by 3/4"' });
    expect(words.gap).toContain('3/4" at the bottom');
    // 116 and hinges of 4 at most leave 3 1/2 where 3 is the most that the fork catches
    expect(said(double(3), found(120, null)).words).toBe('Too wide by 1/2"');
  });

  it('[D60] says that leaves do not go in at all in place of a gap below nothing', () => {
    expect(said(double(2.5), found(116, null)).gap).toMatch(
      /^The leaves are 1\/2" too wide to go in, by their spread/,
    );
  });

  it('[D60] names the leaves where it is these that are not sure', () => {
    const sure = partOf('hinge', [2, 2, 2]);
    const site = gateOf([44], { hinge: sure, latch: partOf('latch', [1.75, 2, 2.25]) });
    const [leaf = 'leaf:'] = leafIds(site);
    const widths = { top: inches(44.5), middle: null, bottom: inches(44) };
    const words = said(site, found(48, null, { leaves: { [leaf]: widths } }));
    expect(words.words).toBe('May hold: measure the leaves');
  });

  it('[D60] where top and bottom differ by more than the latch takes up, measuring is not named', () => {
    const unsure = partOf('hinge', [1, 2, 3]);
    const site = gateOf([44], { hinge: unsure, latch: partOf('latch', [1.75, 2, 2.25]) });
    // each may hold: 47 with hinges of 1, 49 with hinges of 3; no hinge suits both
    expect(said(site, found(49, 47))).toMatchObject({
      level: 'ask',
      words: 'May hold at the top or at the bottom, not at both',
    });
  });

  it('[D60] what can be adjusted holds once it is', () => {
    const loose = partOf('hinge', [1.5, 1.75, 2.25], { spread: 'adjustable' });
    const site = gateOf([44], { hinge: loose, latch: partOf('latch', [1.75, 2, 2.25]) });
    expect(said(site, found(48.25, null))).toEqual({
      level: 'holds',
      words: 'Holds once adjusted',
      gap: 'Before that it leaves a gap of 2 1/2".',
    });
  });

  it('[D60] two gaps at a stop are told in all', () => {
    const site = wayYard(centreStop, 2);
    const { target } = setOf(site, { ...onlyGate(site), asSet: found(48, null) })?.opening ?? {};
    expect(said(site, found(target ?? 0, null)).gap).toMatch(/^It leaves a gap of .*" in all/);
  });
});
