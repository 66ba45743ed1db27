import { useLayoutEffect, type RefObject } from 'react';
import { panBy, toScreen } from '../../editor/view.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { useBench } from '../bench.ts';

/** How far a point is to stand clear of what lies over the pad, in CSS pixels. */
const clear = 40;

/**
 * Moves the pad so that a point that has come to lie under an element stands clear of it. Looked
 * at anew when the point or the element's shape is another.
 */
export const useClearOf = (
  over: RefObject<HTMLElement | null>,
  { x, y }: SitePoint,
  shape: string,
): void => {
  const { session, pad } = useBench();
  useLayoutEffect(() => {
    const element = over.current;
    const size = pad.getState();
    if (element === null || size === null || shape === '') return;
    const { offsetLeft, offsetTop, offsetWidth, offsetHeight } = element;
    const at = toScreen(session.getState().view, { x, y });
    const beside = at.x < offsetLeft - clear || at.x > offsetLeft + offsetWidth + clear;
    const [top, bottom] = [offsetTop - clear, offsetTop + offsetHeight + clear];
    if (beside || at.y < top || at.y > bottom) return;
    // an element that hangs from the top is stepped out of downwards, another upwards
    const to = offsetTop < size.height - offsetTop - offsetHeight ? bottom : top;
    session.setState(({ view }) => ({ view: panBy(view, { x: 0, y: to - at.y }) }));
  }, [over, x, y, shape, session, pad]);
};
