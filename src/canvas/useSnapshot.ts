import { useEffect, useMemo, useState } from 'react';
import type { Pad } from '../editor/view.ts';
import type { View } from '../store/view.ts';
import { takeSnapshot, type Snapshot, type Still } from './snapshot.ts';
import { useFontsReady } from './useFontsReady.ts';

/** The pad is at rest when the view has stood still for this long, in milliseconds. */
const rest = 140;

/** The view as it was when it last stood still. */
const useRestingView = (view: View): View => {
  const [resting, setResting] = useState(view);
  useEffect(() => {
    const timer = setTimeout(() => setResting(view), rest);
    return () => clearTimeout(timer);
  }, [view]);
  return resting;
};

/**
 * A picture of the still drawing: taken at once when the drawing, its colours or the pad's size
 * change, and when the view has come to rest. Null while the pad has no size.
 */
export const useSnapshot = (
  still: Omit<Still, 'lettered'>,
  view: View,
  pad: Pad,
): Snapshot | null => {
  const lettered = useFontsReady();
  const resting = useRestingView(view);
  const { primitives, palette, system, inch } = still;
  const { width, height } = pad;
  return useMemo(() => {
    if (width === 0 || height === 0) return null;
    const drawn = { primitives, palette, system, inch, lettered };
    return takeSnapshot(drawn, resting, { width, height });
  }, [primitives, palette, system, inch, lettered, resting, width, height]);
};
