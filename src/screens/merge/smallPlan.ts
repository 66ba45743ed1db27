import type { Atom } from '../../drawing/atom.ts';
import { explode } from '../../drawing/explode.ts';
import { drawPlan } from '../../drawing/plan/drawPlan.ts';
import type { Primitive } from '../../drawing/primitive.ts';
import type { Layout } from '../../engine/layout.ts';
import { layOutSite } from '../../engine/layOutSite.ts';
import { surveyed } from '../../engine/survey/surveyed.ts';
import { boundsOf, expandBounds, unionOfBounds, type Bounds } from '../../geometry/bounds.ts';
import type { Site } from '../../site/site.ts';
import { selectionMarks } from '../yard/selectionMarks.ts';
import { selectionOf } from './selectionOf.ts';

/** A copy as it stands, laid out. */
export interface LaidCopy {
  readonly site: Site;
  readonly layout: Layout;
}

/** A document with its marks where what was observed puts them, laid out. */
export const laidCopy = (document: Site): LaidCopy => {
  const { site } = surveyed(document, null);
  return { site, layout: layOutSite(site) };
};

/** Ground that is shown round a thing at least, inches: 12 ft. Ours. */
const leastGround = 144;

/** CSS pixels for an inch of paper. */
export const inch = 96;

/** A place for a small plan on the screen, CSS pixels. */
export interface Frame {
  readonly width: number;
  readonly height: number;
}

const pointsIn = (primitive: Primitive) => {
  if ('points' in primitive) return primitive.points;
  if (primitive.kind === 'circle' && primitive.pen === 'selected') return [primitive.centre];
  return [];
};

const marksIn = ({ site, layout }: LaidCopy, key: string, scale: number): readonly Primitive[] =>
  selectionMarks(site, layout, { selection: selectionOf(site, key), scale });

/** The ground that small plans of both copies show of a part, so that they show the same; null for none. */
export const groundOf = (copies: readonly LaidCopy[], key: string): Bounds | null => {
  const found = copies.flatMap((copy) => boundsOf(marksIn(copy, key, 1).flatMap(pointsIn)) ?? []);
  const [first, ...others] = found;
  if (first === undefined) return null;
  const all = others.reduce(unionOfBounds, first);
  const size = Math.max(all.maxX - all.minX, all.maxY - all.minY);
  return expandBounds(all, Math.max(leastGround, size / 3));
};

/** The plan of a copy about some ground, with what is in conflict shown as selected. */
export const smallPlan = (
  copy: LaidCopy,
  key: string,
  { ground, frame }: { readonly ground: Bounds; readonly frame: Frame },
): readonly Atom[] => {
  const [across, up] = [ground.maxX - ground.minX, ground.maxY - ground.minY];
  // CSS pixels for an inch of ground
  const scale = Math.min(frame.width / across, frame.height / up);
  const origin = {
    x: (ground.minX + ground.maxX) / 2 - frame.width / scale / 2,
    y: (ground.minY + ground.maxY) / 2 + frame.height / scale / 2,
  };
  const drawn = drawPlan(copy.site, copy.layout, {
    omit: ['chains', 'tags', 'flags', 'leaf rooms', 'pins'],
  });
  return explode([...marksIn(copy, key, scale), ...drawn], { origin, scale: scale / inch });
};
