import { useLayoutEffect, useState, type RefObject } from 'react';
import type { Pad } from '../editor/view.ts';

/** The inner size of an element in CSS pixels, as it is now; zero by zero before it is laid out. */
export const useSize = (element: RefObject<HTMLElement | null>): Pad => {
  const [size, setSize] = useState<Pad>({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const watched = element.current;
    if (watched === null) return undefined;
    const measure = () => setSize({ width: watched.clientWidth, height: watched.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return size;
};
