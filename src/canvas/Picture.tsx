import { useLayoutEffect, useRef } from 'react';
import type { Atom } from '../drawing/atom.ts';
import { atomsInSight } from '../drawing/atomsInSight.ts';
import { differingBounds } from '../drawing/differingBounds.ts';
import type { Palette } from '../drawing/ink.ts';
import type { Bounds } from '../geometry/bounds.ts';
import { paintAtoms } from './paintAtoms.ts';
import { useFontsReady } from './useFontsReady.ts';

/** What is painted, and how. */
interface Painting {
  readonly atoms: readonly Atom[];
  readonly palette: Palette;
  /** Paper inches. */
  readonly width: number;
  readonly height: number;
  /** CSS pixels for a paper inch. */
  readonly scale: number;
  /** Paper inches that lie to the left of the picture, where only a part is shown. */
  readonly from: number;
  /** Whether the lettering has loaded. */
  readonly lettered: boolean;
  /** Pixels of the picture to a CSS pixel. */
  readonly density: number;
}

interface Props extends Omit<Painting, 'from' | 'lettered' | 'density'> {
  readonly from?: number;
  /** What the picture shows, for those who do not see it. */
  readonly label: string;
}

const pixels = (inches: number, { scale, density }: Painting): number =>
  Math.max(1, Math.round(inches * scale * density));

const paintWhole = (canvas: HTMLCanvasElement, now: Painting): void => {
  // a canvas that gets a size is blank
  canvas.width = pixels(now.width, now);
  canvas.height = pixels(now.height, now);
  const context = canvas.getContext('2d');
  if (context === null) return;
  context.scale(now.density, now.density);
  context.translate(-now.from * now.scale, 0);
  paintAtoms(context, now.atoms, now);
};

/** Paints only what lies within bounds on the paper, grown to whole pixels so that no edge of it shows. */
const paintWithin = (
  canvas: HTMLCanvasElement,
  { minX, minY, maxX, maxY }: Bounds,
  now: Painting,
): void => {
  const context = canvas.getContext('2d');
  const inch = now.scale * now.density;
  const shift = now.from * inch;
  const left = (Math.max(0, Math.floor(minX * inch - shift)) + shift) / inch;
  const right = (Math.min(canvas.width, Math.ceil(maxX * inch - shift)) + shift) / inch;
  const [top, bottom] = [Math.floor(minY * inch) / inch, Math.ceil(maxY * inch) / inch];
  if (context === null || left >= right) return;
  const area = [left, top, right - left, bottom - top].map((side) => side * now.scale);
  const [x = 0, y = 0, across = 0, down = 0] = area;
  context.save();
  context.beginPath();
  context.rect(x, y, across, down);
  context.clip();
  context.clearRect(x, y, across, down);
  const part = { minX: left, minY: top, maxX: right, maxY: bottom };
  paintAtoms(context, atomsInSight(now.atoms, part), now);
  context.restore();
};

const sameLook = (a: Painting, b: Painting): boolean =>
  a.palette === b.palette &&
  a.width === b.width &&
  a.height === b.height &&
  a.scale === b.scale &&
  a.from === b.from &&
  a.lettered === b.lettered &&
  a.density === b.density;

const paint = (canvas: HTMLCanvasElement, before: Painting | null, now: Painting): void => {
  if (before === null || !sameLook(before, now)) return paintWhole(canvas, now);
  const bounds = differingBounds(before.atoms, now.atoms);
  if (bounds !== null) paintWithin(canvas, bounds, now);
};

/** Atoms on a canvas of their own: a page, a tape, an opening bar. Other atoms are painted only where they differ. */
export const Picture = ({ atoms, palette, from = 0, label, ...size }: Props) => {
  const { width, height, scale } = size;
  const canvas = useRef<HTMLCanvasElement>(null);
  const painted = useRef<Painting | null>(null);
  const lettered = useFontsReady();
  useLayoutEffect(() => {
    if (canvas.current === null) return;
    // lettering that loads late is painted again
    canvas.current.dataset['lettered'] = String(lettered);
    const density = window.devicePixelRatio || 1;
    const now = { atoms, palette, width, height, scale, from, lettered, density };
    paint(canvas.current, painted.current, now);
    painted.current = now;
  }, [atoms, palette, width, height, scale, from, lettered]);
  return (
    <canvas
      ref={canvas}
      role="img"
      aria-label={label}
      style={{ width: width * scale, height: height * scale }}
    />
  );
};
