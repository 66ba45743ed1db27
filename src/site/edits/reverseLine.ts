import { withAnchored } from '../anchoredOn.ts';
import { entry } from '../entry.ts';
import { flipped } from '../flipped.ts';
import type { LineId } from '../ids.ts';
import { legAt } from '../legGround.ts';
import { turnedLegNotes } from '../legNotes.ts';
import { verticesOf } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Lets a line run the other way. Everything else is told from the other end with it, so that the
 * fence, its gates, pins and the hooked end of the tape stay where they are on the ground; twice gives
 * the line as it was. RangeError for an unknown line.
 */
export const reverseLine = (site: Site, id: LineId): Site => {
  const line = entry(site, 'lines', id);
  const vertices = verticesOf(line.path);
  const path = Object.fromEntries(
    vertices.map(({ id: vertex, mark }, n) => [
      vertex,
      { mark, order: vertices.at(-1 - n)?.order ?? '' },
    ]),
  );
  const hook = line.hook === 'start' ? 'end' : 'start';
  const turned = withEntry(site, 'lines', id, { ...line, hook, path, ...turnedLegNotes(line) });
  return withAnchored(turned, id, (thing) => flipped(thing, legAt(line, thing.leg).next));
};
