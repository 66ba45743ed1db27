import { useLayoutEffect, useRef } from 'react';
import type { Atom } from '../drawing/atom.ts';
import type { Palette } from '../drawing/ink.ts';
import { paintAtoms } from './paintAtoms.ts';
import { useFontsReady } from './useFontsReady.ts';

interface Props {
  readonly atoms: readonly Atom[];
  readonly palette: Palette;
  /** Paper inches. */
  readonly width: number;
  readonly height: number;
  /** CSS pixels for a paper inch. */
  readonly scale: number;
  /** Paper inches that lie to the left of the picture, where only a part is shown. */
  readonly from?: number;
  /** What the picture shows, for those who do not see it. */
  readonly label: string;
}

/** Atoms on a canvas of their own: a page, a tape, an opening bar. */
export const Picture = ({ atoms, palette, from = 0, label, ...size }: Props) => {
  const { width, height, scale } = size;
  const canvas = useRef<HTMLCanvasElement>(null);
  const fonts = useFontsReady();
  useLayoutEffect(() => {
    const element = canvas.current;
    const context = element?.getContext('2d');
    if (!element || !context) return;
    // lettering that loads late is painted again
    element.dataset['lettered'] = String(fonts);
    const density = window.devicePixelRatio || 1;
    element.width = Math.max(1, Math.round(width * scale * density));
    element.height = Math.max(1, Math.round(height * scale * density));
    context.scale(density, density);
    context.translate(-from * scale, 0);
    paintAtoms(context, atoms, { palette, scale });
  }, [atoms, palette, width, height, scale, from, fonts]);
  return (
    <canvas
      ref={canvas}
      role="img"
      aria-label={label}
      style={{ width: width * scale, height: height * scale }}
    />
  );
};
