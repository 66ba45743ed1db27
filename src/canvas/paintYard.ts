import { explode } from '../drawing/explode.ts';
import type { Palette } from '../drawing/ink.ts';
import type { Primitive } from '../drawing/primitive.ts';
import type { Pad } from '../editor/view.ts';
import type { View } from '../store/view.ts';
import type { LengthSystem } from '../units/lengthStyle.ts';
import { padProjection } from './padProjection.ts';
import { padRoom } from './padRoom.ts';
import { paintAtoms } from './paintAtoms.ts';
import { paintGrid, rulingFor } from './paintGrid.ts';

/** A drawing on its paper, the pad it is on, and how the pad is looked at. */
interface Yard {
  readonly primitives: readonly Primitive[];
  readonly palette: Palette;
  readonly system: LengthSystem;
  /** CSS pixels for a paper inch. */
  readonly inch: number;
  readonly view: View;
  readonly pad: Pad;
}

/** Paints a drawing once onto a canvas of its own, as large as the pad. */
export const paintYard = ({ primitives, palette, system, inch, view, pad }: Yard) => {
  const density = Math.min(2, window.devicePixelRatio || 1);
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(pad.width * density);
  canvas.height = Math.round(pad.height * density);
  const context = canvas.getContext('2d');
  if (context === null) return canvas;
  context.scale(density, density);
  const area = { left: 0, top: 0, right: pad.width, bottom: pad.height };
  paintGrid(context, { view, area, palette, over: 'paper', ruling: rulingFor(view.scale, system) });
  const atoms = explode(primitives, padProjection(view, inch), padRoom(pad, inch));
  paintAtoms(context, atoms, { palette, scale: inch });
  return canvas;
};
