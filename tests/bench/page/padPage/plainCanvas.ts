import { padProjection } from '../../../../src/canvas/padProjection.ts';
import { padRoom } from '../../../../src/canvas/padRoom.ts';
import { paintAtoms } from '../../../../src/canvas/paintAtoms.ts';
import { paintGrid, rulingFor } from '../../../../src/canvas/paintGrid.ts';
import type { Atom } from '../../../../src/drawing/atom.ts';
import { explode } from '../../../../src/drawing/explode.ts';
import { palettes } from '../../../../src/drawing/palettes.ts';
import type { Primitive } from '../../../../src/drawing/primitive.ts';
import type { Pad } from '../../../../src/editor/view.ts';
import type { View } from '../../../../src/store/view.ts';

/** CSS pixels for a paper inch, as the pad has by day. */
const inch = 96;

/** The scene of the pad in a view. */
export const sceneOf = (primitives: readonly Primitive[], view: View, pad: Pad): readonly Atom[] =>
  explode(primitives, padProjection(view, inch), padRoom(pad, inch));

/**
 * A canvas without sheets or React, over the pad, that paints all of a scene whenever it is asked or a pointer moves
 * over it, where that has moved it to: what a pad would do that keeps no picture.
 */
export const plainCanvas = (over: Element, atoms: readonly Atom[], view: View) => {
  const box = over.getBoundingClientRect();
  const canvas = document.createElement('canvas');
  const density = window.devicePixelRatio;
  canvas.width = box.width * density;
  canvas.height = box.height * density;
  canvas.style.cssText = `position:fixed;left:${box.x}px;top:${box.y}px;width:${box.width}px;height:${box.height}px;z-index:99`;
  document.body.append(canvas);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('expected a canvas to paint on');
  const area = { left: 0, top: 0, right: box.width, bottom: box.height };
  const palette = palettes.day;
  let moved = { x: 0, y: 0 };
  const paint = (): void => {
    const now = { ...view, x: view.x + moved.x, y: view.y + moved.y };
    context.setTransform(density, 0, 0, density, 0, 0);
    paintGrid(context, {
      view: now,
      area,
      palette,
      over: 'paper',
      ruling: rulingFor(view.scale, 'feet'),
    });
    context.translate(moved.x, moved.y);
    paintAtoms(context, atoms, { palette, scale: inch });
  };
  canvas.addEventListener('pointermove', ({ movementX, movementY }) => {
    moved = { x: moved.x + movementX, y: moved.y + movementY };
    requestAnimationFrame(paint);
  });
  return { paint, remove: () => canvas.remove() };
};
