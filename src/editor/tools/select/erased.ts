import { removeCorner } from '../../../site/edits/removeCorner.ts';
import { removeFeature } from '../../../site/edits/removeFeature.ts';
import { removeGate } from '../../../site/edits/removeGate.ts';
import { removeLine } from '../../../site/edits/removeLine.ts';
import { removeMark } from '../../../site/edits/removeMark.ts';
import { removeObservations } from '../../../site/edits/removeObservations.ts';
import { removePin } from '../../../site/edits/removePin.ts';
import { removeShots } from '../../../site/edits/removeShots.ts';
import { removeUnderlay } from '../../../site/edits/removeUnderlay.ts';
import { removeVertex } from '../../../site/edits/removeVertex.ts';
import type { MarkId } from '../../../site/ids.ts';
import { leastMarks } from '../../../site/leastMarks.ts';
import { marksInUse, marksOfFeatures } from '../../../site/marksInUse.ts';
import { verticesOf } from '../../../site/pathOrder.ts';
import type { Site } from '../../../site/site.ts';
import { pinOf } from '../../../store/pinOf.ts';
import { read, unread } from '../../../units/parsed.ts';
import type { Parsed } from '../../../units/parsed.ts';
import { entriesOf } from '../../entriesOf.ts';
import { isLocked, lockedLine } from '../../lockedPicture.ts';
import { withoutLeg } from '../../withoutLeg.ts';
import type { Held } from './selectState.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { theThing } from '../../theThing.ts';

/** A mark that a person erases goes, whatever it is called, once nothing stands on it. */
const withoutLone = (site: Site, id: MarkId): Site =>
  id in site.marks && !marksInUse(site).has(id) ? removeMark(site, id) : site;

/** A line that is left with one mark is no line. */
const outOfFence = (site: Site, id: MarkId): Site => {
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

/** A corner that only one piece of ground has goes out of it, if that has one to spare. */
const withoutCorner = (site: Site, id: MarkId): Parsed<Site> => {
  const passes = entriesOf(site.features).flatMap(([feature, thing]) => {
    if (!('path' in thing)) return [];
    const corners = verticesOf(thing.path).filter(({ mark }) => mark === id);
    return corners.map((corner) => ({ feature, thing, corner: corner.id }));
  });
  const [only, other] = passes;
  const fenced = Object.values(site.lines).some(({ path }) =>
    Object.values(path).some(({ mark }) => mark === id),
  );
  if (only === undefined)
    return unread(phrase`Something drawn stands at this mark: erase that instead`);
  if (other !== undefined || fenced) {
    return unread(phrase`Several things meet at this mark: take it out of one of them on its card`);
  }
  const least = leastMarks(only.thing);
  const noun = theThing[only.thing.kind];
  if (Object.keys(only.thing.path).length > least) {
    return read(withoutLone(removeCorner(site, only.feature, only.corner), id));
  }
  return unread(phrase`A ${noun} needs ${least} marks: erase the ${noun} instead`);
};

/**
 * A site without a thing; a held post is let go. A mark goes out of the fence that passes it, or out of the one piece
 * of ground of which it is a corner, and goes itself with its name and what was observed of it; where
 * that cannot be, one line says so.
 */
export const erased = (site: Site, what: Held): Parsed<Site> => {
  switch (what.kind) {
    case 'gate':
      return read(removeGate(site, what.id));
    case 'feature':
      return read(removeFeature(site, what.id));
    case 'pin':
      return read(removePin(site, what.id));
    case 'tape':
      return read(removeObservations(site, [what.id]));
    case 'shot':
      return read(removeShots(site, [what.id]));
    case 'post': {
      const pin = pinOf(what.id);
      if (pin !== null) return read(removePin(site, pin));
      return unread(
        phrase`The bays put this post here: drag it elsewhere, or keep the ground clear`,
      );
    }
    case 'underlay':
      return isLocked(site, what.id) ? unread(lockedLine) : read(removeUnderlay(site, what.id));
    case 'line':
      return read(removeLine(site, what.id));
    case 'leg':
      return read(withoutLeg(site, what.line, what.id));
    case 'mark':
      if (marksOfFeatures(site).has(what.id)) return withoutCorner(site, what.id);
      return read(withoutLone(outOfFence(site, what.id), what.id));
  }
};
