import { removeFeature } from '../../../site/edits/removeFeature.ts';
import { removeGate } from '../../../site/edits/removeGate.ts';
import { removeLine } from '../../../site/edits/removeLine.ts';
import { removeMark } from '../../../site/edits/removeMark.ts';
import { removeVertex } from '../../../site/edits/removeVertex.ts';
import type { MarkId } from '../../../site/ids.ts';
import { marksInUse, marksOfFeatures } from '../../../site/marksInUse.ts';
import { verticesOf } from '../../../site/pathOrder.ts';
import type { Site } from '../../../site/site.ts';
import { read, unread } from '../../../units/parsed.ts';
import type { Parsed } from '../../../units/parsed.ts';
import { entriesOf } from '../../entriesOf.ts';
import { withoutLeg } from '../../withoutLeg.ts';
import type { Held } from './selectState.ts';

/** A line that is left with one mark is no line. */
const withoutMark = (site: Site, id: MarkId): Site => {
  const passes = entriesOf(site.lines).flatMap(([line, { path }]) =>
    verticesOf(path)
      .filter(({ mark }) => mark === id)
      .map((vertex) => ({ line, vertex: vertex.id })),
  );
  return passes.reduce((so, { line, vertex }) => {
    const path = so.lines[line]?.path;
    if (path === undefined || path[vertex] === undefined) return so;
    if (Object.keys(path).length <= 2) return removeLine(so, line);
    return removeVertex(so, line, vertex);
  }, site);
};

/**
 * A site without a thing. A mark goes out of the fence that passes it; a corner of a building or
 * of other ground cannot go by itself, and one line says so.
 */
export const erased = (site: Site, what: Held): Parsed<Site> => {
  switch (what.kind) {
    case 'gate':
      return read(removeGate(site, what.id));
    case 'feature':
      return read(removeFeature(site, what.id));
    case 'line':
      return read(removeLine(site, what.id));
    case 'leg':
      return read(withoutLeg(site, what.line, what.id));
    case 'mark':
      if (marksOfFeatures(site).has(what.id)) {
        return unread('This mark is a corner of something drawn: erase that instead');
      }
      if (!marksInUse(site).has(what.id)) return read(removeMark(site, what.id));
      return read(withoutMark(site, what.id));
  }
};
