import { checked } from '../checked.ts';
import { entry } from '../entry.ts';
import type { FeatureId, SpecId } from '../ids.ts';
import { nextId } from '../nextId.ts';
import { placesInside } from '../placesInside.ts';
import { signedLength } from '../quantities.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';
import { closeLine } from './closeLine.ts';
import { extendLine } from './extendLine.ts';
import { startLine } from './startLine.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Draws a fence line of a spec so far inside a boundary (inches; on its left where it is open), under
 * `nextId(site, 'line')`, that goes along when the boundary moves. RangeError for what is no boundary
 * of this site, and for an unknown spec.
 */
export const followBoundary = (site: Site, id: FeatureId, spec: SpecId, inside: number): Site => {
  const boundary = entry(site, 'features', id);
  if (boundary.kind !== 'boundary') {
    throw new RangeError(phrase`features: expected a boundary, found ${quoted(id)}`);
  }
  const by = checked(signedLength, inside, ['lines', 'follows', 'inside']);
  const [first, ...rest] = placesInside(site, boundary, by);
  if (first === undefined)
    throw new RangeError(phrase`features › ${id}: expected a boundary with corners`);
  const line = nextId(site, 'line');
  const drawn = rest.reduce(
    (so, place) => extendLine(so, line, place),
    startLine(site, spec, first),
  );
  const whole = boundary.closed ? closeLine(drawn, line) : drawn;
  return withEntry(whole, 'lines', line, {
    ...entry(whole, 'lines', line),
    follows: { feature: id, inside: by },
  });
};
