import { describe, expect, it } from 'vitest';
import { clearPassage } from '../../../src/engine/gate/clearPassage.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { fromDegrees } from '../../../src/units/radians.ts';
import { firstGate } from '../plainYard.ts';
import { cantilever, centreStop, gap, swing, wayYard } from '../wayYard.ts';

const passage = (site: Site) => {
  const id = firstGate(site);
  const [gate, laid] = [site.gates[id], layOutSite(site).gates[id]];
  if (gate === undefined || laid === undefined) throw new Error('no gate');
  return clearPassage(gate, laid);
};

describe('clearPassage', () => {
  // how it is measured: 2010 ADA 404.2.3, UFAS 4.13.5: leaf at 90 degrees; the sum is derived: opening
  // 48, pin 15/16 from the post, half a frame of 1.660
  it('[W8] the opening less pin and half of the frame of each leaf at 90 degrees', () => {
    const single = passage(wayYard(swing));
    expect(single.clear).toBeCloseTo(48 - 0.9375 - 0.83, 9);
    expect(single.terms.map(({ size }) => size)).toEqual([48, expect.closeTo(-1.7675, 9)]);
    expect(single.source).toContain('404.2.3');
    const double = passage(wayYard(swing, 2));
    expect(double.clear).toBeCloseTo(120 - 2 * (0.9375 + 0.83), 9);
  });

  it('[W8] a leaf that opens farther than 90 degrees leaves no more, one that opens less leaves less', () => {
    const at = (degrees: number) =>
      passage(wayYard({ kind: 'swing', turns: fromDegrees(degrees) })).clear;
    expect(at(180)).toBeCloseTo(at(90), 9);
    // at 60 degrees half of pin to tip still stands in the opening
    const in60 = 0.9375 + (0.9375 + 44) / 2 + 0.83 * Math.sin(Math.PI / 3);
    expect(at(60)).toBeCloseTo(48 - in60, 9);
  });

  it('[W8] with a stop between, the wider half; what rolls or is not there takes nothing', () => {
    expect(passage(wayYard(centreStop)).clear).toBeCloseTo(48 - 0.9375 - 0.83, 9);
    expect(passage(wayYard(gap)).clear).toBe(60);
    expect(passage(wayYard(cantilever)).clear).toBeCloseTo(48, 9);
  });
});
