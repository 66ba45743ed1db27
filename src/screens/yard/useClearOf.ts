import { useLayoutEffect, type RefObject } from 'react';
import { intoSight } from '../../editor/intoSight.ts';
import { panBy, toScreen } from '../../editor/view.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { useBench } from '../bench.ts';

/** The line that says what to do next lies over the top of the pad, CSS pixels. */
const promptHeight = 30;

/**
 * Moves the pad so that a point that has come to lie off it, or under an element at its foot,
 * stands clear. Looked at anew when the point or the element's shape is another.
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
    const covers = cover.left < ground.right && cover.top < ground.bottom;
    const maxY = (covers ? cover.top : ground.bottom) - ground.top;
    const seen = { minX: 0, minY: promptHeight, maxX: ground.width, maxY };
    const by = intoSight(toScreen(session.getState().view, { x, y }), seen);
    if (by.x === 0 && by.y === 0) return;
    session.setState(({ view }) => ({ view: panBy(view, by) }));
  }, [over, x, y, shape, session]);
};
