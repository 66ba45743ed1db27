import type { Gate } from '../gate.ts';
import type { Site } from '../site.ts';
import { same } from './same.ts';

const built = (gate: Gate): unknown => [gate.way.kind, Object.keys(gate.leaves).toSorted()];

/**
 * The gates that some document closes in another way or with other leaves than another one does: what closes
 * them is one thing there, since half of one way and half of another close nothing.
 */
export const wholeGates = (sites: readonly Site[]): ReadonlySet<string> => {
  const first = new Map<string, unknown>();
  const apart = new Set<string>();
  for (const site of sites) {
    for (const [id, gate] of Object.entries<Gate>(site.gates)) {
      const now = built(gate);
      if (first.has(id) && !same(first.get(id), now)) apart.add(id);
      else first.set(id, now);
    }
  }
  return apart;
};
