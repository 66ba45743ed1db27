import { describe, expect, it } from 'vitest';
import { drawGate, gateLabel } from '../../../src/drawing/plan/drawGate.ts';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import { legend } from '../../../src/drawing/sheet/plan/legend.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Gate } from '../../../src/site/gate.ts';
import type { Site } from '../../../src/site/site.ts';
import { receiverFor } from '../../../src/trade/receivers.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { firstGate } from '../../engine/plainYard.ts';
import { cantilever, centreStop, gap, swing, wayYard } from '../../engine/wayYard.ts';
import { textsOf } from '../textsOf.ts';

const { source: _, ...receiver } = receiverFor('loose soil');

const laid = (site: Site) => {
  const layout = layOutSite(site).gates[firstGate(site)];
  if (layout === undefined) throw new Error('no gate');
  return layout;
};
const drawn = (site: Site): readonly Primitive[] => drawGate(laid(site));
const kinds = (site: Site): string[] =>
  drawn(site).map((one) => (one.kind === 'polyline' ? `line ${one.pen}` : one.kind));

describe('drawGate', () => {
  it('[D49] a leaf turns on its pin by what its gate says', () => {
    const site = wayYard({ kind: 'swing', turns: radians(2) }, 1, { opens: 'right' });
    const [arc] = drawn(site);
    const [leaf] = laid(site).leaves;
    expect(arc).toMatchObject({ kind: 'arc', centre: leaf?.hinge, sweep: -2 });
    // pin half way into a hinge of 1 7/8, leaf 44
    expect(arc?.kind === 'arc' ? arc.radius : 0).toBeCloseTo(44.9375, 9);
  });

  it('[D49] a leaf that rolls is drawn closed, and dashed where it is stored', () => {
    expect(kinds(wayYard(cantilever))).toEqual(['line swing', 'line leaf']);
    const [stored, closed] = drawn(wayYard(cantilever));
    const [slide] = laid(wayYard(cantilever)).slides;
    expect(closed).toMatchObject({ points: [slide?.closed.start, slide?.closed.end] });
    const xs = stored?.kind === 'polyline' ? stored.points.map(({ x }) => x) : [];
    expect(Math.min(...xs)).toBeCloseTo(slide?.stored.start.x ?? NaN, 9);
    expect(Math.max(...xs)).toBeCloseTo(slide?.stored.end.x ?? NaN, 9);
  });

  it('[D49] a stop is a post with its tag, a receiver a dot, a gap nothing', () => {
    const rings = (site: Site) =>
      drawn(site).flatMap((one) => (one.kind === 'circle' ? [[one.ink, one.centre]] : []));
    const stopped = wayYard(centreStop);
    expect(rings(stopped)).toEqual([]);
    const tag = drawPlan(stopped, layOutSite(stopped)).find(
      (one) => one.kind === 'text' && one.text === 'S1',
    );
    expect(tag).toMatchObject({ at: laid(stopped).stop });
    const double = wayYard(swing, 2, { receiver });
    expect(rings(double)).toEqual([['gate', laid(double).receiver?.at]]);
    expect(drawn(wayYard(gap))).toEqual([]);
  });

  it('[D49] the name stands off a leaf that rolls, on the other side of the fence', () => {
    const label = (site: Site, gate: Partial<Gate>) =>
      gateLabel(laid(site), { ...(site.gates[firstGate(site)] as Gate), ...gate }, site.lengths);
    const at = (primitive: Primitive) => (primitive.kind === 'text' ? primitive.at.y : NaN);
    expect(at(label(wayYard(cantilever), {}))).toBeLessThan(0);
    expect(at(label(wayYard(swing), {}))).toBeGreaterThan(0);
  });

  it('[D49] posts beside the fence are drawn and tagged', () => {
    const site = wayYard(cantilever);
    const texts = drawPlan(site, layOutSite(site)).flatMap((one) =>
      one.kind === 'text' ? [one.text] : [],
    );
    expect(texts).toContain('R1');
    expect(texts).toContain('R2');
  });

  it('[D49] the key names what is shown and nothing else', () => {
    const words = (site: Site) =>
      textsOf(legend(site, layOutSite(site), 8, null).atoms).map(({ text }) => text);
    expect(words(wayYard(swing))).toContain('gate, open');
    expect(words(wayYard(swing)).join()).not.toMatch(/rolls|receiver|stop/);
    expect(words(wayYard(cantilever))).toContain('gate that rolls, closed');
    expect(words(wayYard(cantilever))).not.toContain('gate, open');
    expect(words(wayYard(centreStop))).toContain('S: stop between two leaves');
    expect(words(wayYard(swing, 2, { receiver, bottom: inches(2) }))).toContain(
      'receiver of a drop rod',
    );
  });
});
