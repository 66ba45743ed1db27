import type { GateId, HardwareId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { leavesOf } from '../gate/termsOf.ts';
import type { Flag } from '../flag.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { phrase } from '../../phrases/phrase.ts';

const partsOf = (site: Site, id: GateId): HardwareId[] => {
  const gate = site.gates[id];
  if (gate === undefined) return [];
  const parts = [gate.latch, ...leavesOf(gate).map(({ hinge }) => hinge)];
  return parts.filter((part) => part !== null);
};

/** One caution for each part in use of which the size is assumed, at the first gate that uses it. */
export const checkHardware = (site: Site, laid: LaidLines): Flag[] => {
  const seen = new Set<HardwareId>();
  return Object.values(laid.gates).flatMap((gate) =>
    partsOf(site, gate.id).flatMap((id): Flag[] => {
      const part = site.hardware[id];
      if (part === undefined || part.from !== 'assumed' || seen.has(id)) return [];
      seen.add(id);
      return [
        {
          level: 'caution',
          rule: 'hardware assumed',
          place: { kind: 'gate', id: gate.id },
          at: gate.middle,
          message: phrase`${part.label.replace(/\s+/g, ' ').trim() || id}: what it takes up is assumed; measure the part on order.`,
        },
      ];
    }),
  );
};
