import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { closedBy, wayToBegin } from '../../../src/screens/plans/closedBy.ts';
import { genericBook } from '../../../src/screens/plans/genericBook.ts';
import { leafCounts, type GateWay } from '../../../src/site/gateWay.ts';
import type { GateId } from '../../../src/site/ids.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import type { Site } from '../../../src/site/site.ts';
import { drive, walk, yard } from '../../drawing/orders/signedYard.ts';

const kinds = Object.keys(leafCounts) as GateWay['kind'][];

const laidIn = (site: Site, id: GateId) => {
  const laid = layOutSite(site).gates[id];
  if (laid === undefined) throw new Error('the gate is not laid out');
  return laid;
};

const inWay = (site: Site, id: GateId, kind: GateWay['kind']): Site => {
  const laid = laidIn(site, id);
  return closedBy(site, laid, wayToBegin(kind, site, laid), genericBook);
};

describe('closedBy', () => {
  const pairs = kinds.flatMap((first) => kinds.map((then) => [first, then] as const));

  it.each(pairs)(
    'from %s to %s there is a gate that opens again and has what it needs',
    (...two) => {
      for (const id of [walk, drive]) {
        const [first, then] = two;
        const site = inWay(inWay(yard, id, first), id, then);
        expect(openDocument(structuredClone(site))).toMatchObject({ ok: true });
        const gate = site.gates[id];
        expect(gate?.way.kind).toBe(then);
        expect(leafCounts[then]).toContain(Object.keys(gate?.leaves ?? {}).length);
        expect(laidIn(site, id).opening.target).toBeGreaterThan(0);
      }
    },
  );

  it('keeps the opening where the leaves are exchanged, and carries no part that nobody uses', () => {
    const before = laidIn(yard, walk).opening.target;
    for (const kind of ['cantilever', 'gap'] as const) {
      const site = inWay(yard, walk, kind);
      expect(laidIn(site, walk).opening.target).toBeCloseTo(before, 9);
      expect(site.hardware).toEqual(yard.hardware);
    }
  });
});
