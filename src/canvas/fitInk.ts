import { explode } from '../drawing/explode.ts';
import type { Primitive } from '../drawing/primitive.ts';
import { fitTo, toScreen, type Pad } from '../editor/view.ts';
import type { Bounds } from '../geometry/bounds.ts';
import type { View } from '../store/view.ts';
import { inkedBounds } from '../drawing/inkedBounds.ts';
import { padProjection } from './padProjection.ts';
import { padRoom } from './padRoom.ts';

/** What is to be shown, and where on the pad. */
export interface Fit {
  readonly primitives: readonly Primitive[];
  /** The ground that the marks take up, in inches. */
  readonly ground: Bounds;
  readonly pad: Pad;
  /** The part of the pad that nothing lies over, in CSS pixels, y down. */
  readonly room: Bounds;
  /** CSS pixels for a paper inch. */
  readonly inch: number;
}

/** How far dimensions and letters reach over the ground on each side, in CSS pixels. */
type Over = Bounds;

/** Letters find other places at another scale, so the fit is looked at a few times. */
const looks = 4;
/** The ground gets this part of the room at least, whatever is written around it. */
const leastShare = 0.3;

const overOf = ({ primitives, ground, pad, inch }: Fit, view: View): Over => {
  const atoms = explode(primitives, padProjection(view, inch), padRoom(pad, inch));
  const ink = inkedBounds(atoms);
  if (ink === null) return { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const least = toScreen(view, { x: ground.minX, y: ground.maxY });
  const most = toScreen(view, { x: ground.maxX, y: ground.minY });
  return {
    minX: Math.max(0, least.x - ink.minX * inch),
    minY: Math.max(0, least.y - ink.minY * inch),
    maxX: Math.max(0, ink.maxX * inch - most.x),
    maxY: Math.max(0, ink.maxY * inch - most.y),
  };
};

/** The view that leaves so much free around the ground. */
const viewFor = ({ ground, room }: Fit, over: Over): View => {
  const [width, height] = [room.maxX - room.minX, room.maxY - room.minY];
  const across = Math.max(width * leastShare, width - over.minX - over.maxX);
  const up = Math.max(height * leastShare, height - over.minY - over.maxY);
  const view = fitTo(ground, { width: across, height: up }, 0);
  const spareX = width - across - over.minX - over.maxX;
  const spareY = height - up - over.minY - over.maxY;
  return {
    ...view,
    x: view.x + room.minX + over.minX + spareX / 2,
    y: view.y + room.minY + over.minY + spareY / 2,
  };
};

const worse = (a: Over, b: Over): Over => ({
  minX: Math.max(a.minX, b.minX),
  minY: Math.max(a.minY, b.minY),
  maxX: Math.max(a.maxX, b.maxX),
  maxY: Math.max(a.maxY, b.maxY),
});

const fits = (over: Over, given: Over): boolean =>
  over.minX <= given.minX + 1 &&
  over.minY <= given.minY + 1 &&
  over.maxX <= given.maxX + 1 &&
  over.maxY <= given.maxY + 1;

/** A view that fits, with what it leaves free made as small as it goes and shared out evenly. */
const tightened = (fit: Fit, view: View, { given, over }: Record<'given' | 'over', Over>): View => {
  const closer = viewFor(fit, over);
  if (fits(overOf(fit, closer), over)) return closer;
  const x = (over.minX - given.minX - (over.maxX - given.maxX)) / 2;
  const y = (over.minY - given.minY - (over.maxY - given.maxY)) / 2;
  return { ...view, x: view.x + x, y: view.y + y };
};

/**
 * The view that shows ground with all that is written around it inside the room, as large as it
 * goes. Where what is written leaves too little for the ground, the ground goes first.
 */
export const fitInk = (fit: Fit): View => {
  let given: Over = { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  let view = viewFor(fit, given);
  for (let look = 0; look < looks; look += 1) {
    const over = overOf(fit, view);
    if (fits(over, given)) return tightened(fit, view, { given, over });
    given = look === 0 ? over : worse(over, given);
    view = viewFor(fit, given);
  }
  return view;
};
