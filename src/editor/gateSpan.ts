import { openingOf } from '../engine/gate/openingOf.ts';
import { termsOf } from '../engine/gate/termsOf.ts';
import type { Gate } from '../site/gate.ts';
import type { Site } from '../site/site.ts';
import { inches } from '../units/inches.ts';
import type { Inches } from '../units/inches.ts';

/**
 * Centre to centre of the two posts of a gate: its opening as the engine works it out, and half of
 * each post. RangeError when the site lacks its line, spec or hardware.
 */
export const gateSpan = (site: Site, gate: Gate): Inches => {
  const line = site.lines[gate.line];
  const spec = line === undefined ? undefined : site.specs[line.spec];
  if (spec === undefined) throw new RangeError(`gate: expected the line ${gate.line} and its spec`);
  const { od } = gate.post ?? spec.gatePost;
  return inches(openingOf(termsOf(gate, site)).target + od);
};
