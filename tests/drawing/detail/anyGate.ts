import * as fc from 'fast-check';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { gateSight } from '../../../src/drawing/detail/gateSight.ts';
import type { Gate } from '../../../src/site/gate.ts';
import type { GateWay } from '../../../src/site/gateWay.ts';
import type { Site } from '../../../src/site/site.ts';
import { oneWidth } from '../../../src/site/oneWidth.ts';
import { inches } from '../../../src/units/inches.ts';
import { fromDegrees } from '../../../src/units/radians.ts';
import { firstGate } from '../../engine/plainYard.ts';
import { wayYard } from '../../engine/wayYard.ts';

const length = (min: number, max: number) =>
  fc.integer({ min: min * 8, max: max * 8 }).map((eighths) => inches(eighths / 8));

const turns = fc.integer({ min: 60, max: 180 }).map(fromDegrees);

const ways: fc.Arbitrary<GateWay> = fc.oneof(
  turns.map((by): GateWay => ({ kind: 'swing', turns: by })),
  fc.tuple(length(2, 5), turns).map(([stop, by]): GateWay => ({
    kind: 'centre stop',
    stop,
    turns: by,
  })),
  fc
    .record({
      overlap: length(0, 12),
      counterbalance: length(20, 90),
      rollers: length(18, 84),
      behind: length(6, 12),
      stores: fc.constantFrom('start' as const, 'end' as const),
    })
    .map((way): GateWay => ({ kind: 'cantilever', ...way })),
  length(30, 120).map((clear): GateWay => ({ kind: 'gap', clear })),
);

/** A fence of 50 ft with a gate of any kind and size in its middle. */
export const anyGate: fc.Arbitrary<Site> = fc
  .record({
    way: ways,
    count: fc.constantFrom(1 as const, 2 as const),
    widths: fc.tuple(length(24, 140), length(24, 140)),
    height: fc.option(length(36, 120)),
    opens: fc.constantFrom('left' as const, 'right' as const),
    hingedAt: fc.constantFrom('start' as const, 'end' as const),
    bottom: fc.option(length(0, 6)),
    holdOpen: fc.boolean(),
  })
  .map(({ way, count, widths, height, opens, hingedAt, bottom, holdOpen }) => {
    const leaves = way.kind === 'centre stop' ? 2 : count;
    const site = wayYard(way, leaves, { opens, hingedAt, bottom, holdOpen });
    const id = firstGate(site);
    const gate = site.gates[id];
    if (gate === undefined) throw new Error('no gate');
    const sized = Object.entries(gate.leaves).map(([leaf, own], n) => [
      leaf,
      { ...own, height, widths: oneWidth(widths[n] ?? widths[0]) },
    ]);
    const own: Gate = { ...gate, leaves: Object.fromEntries(sized) as Gate['leaves'] };
    return { ...site, gates: { [id]: own } };
  });

/** Every gate of a site that is placed, as its pictures show it. */
export const sightsOf = (site: Site, layout = layOutSite(site)) =>
  Object.values(layout.gates).flatMap((laid) => gateSight(site, layout, laid) ?? []);
