import { useLayoutEffect, type RefObject } from 'react';
import { panBy, toScreen } from '../../editor/view.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { useBench } from '../bench.ts';

/** How far a point is to stand clear of what lies over the pad, in CSS pixels. */
const clear = 40;

/**
 * Moves the pad up so that a point that has come to lie under an element at its foot stands clear
 * of it. Looked at anew when the point or the element's shape is another.
 */
export const useClearOf = (
  over: RefObject<HTMLElement | null>,
  { x, y }: SitePoint,
  shape: string,
): void => {
  const { session } = useBench();
  useLayoutEffect(() => {
    const element = over.current;
    const drawing = element?.closest('.yard')?.querySelector('.pad');
    if (!element || !drawing || shape === '') return;
    const ground = drawing.getBoundingClientRect();
    const cover = element.getBoundingClientRect();
    if (cover.left >= ground.right || cover.top >= ground.bottom) return;
    const at = toScreen(session.getState().view, { x, y });
    const top = cover.top - ground.top - clear;
    if (at.y <= top) return;
    session.setState(({ view }) => ({ view: panBy(view, { x: 0, y: top - at.y }) }));
  }, [over, x, y, shape, session]);
};
