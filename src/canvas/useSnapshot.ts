import { useEffect, useMemo, useState } from 'react';
import type { Pad } from '../editor/view.ts';
import type { View } from '../store/view.ts';
import { takeSnapshot, takeUnder, type Snapshot, type Still, type Under } from './snapshot.ts';
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

/** The still drawing, and the pictures that lie under it. */
export type Seen = Omit<Still, 'lettered' | 'over'> & Pick<Under, 'pictures'>;

/**
 * Pictures of what is still, the undermost first: of the pictures under the drawing where there are
 * any, and of the drawing. Each is taken at once when what it shows, its colours or the pad's size
 * change, and when the view has come to rest: a picture that is moved leaves the drawing as it was
 * taken. None while the pad has no size.
 */
export const useSnapshot = (seen: Seen, view: View, pad: Pad): readonly Snapshot[] => {
  const lettered = useFontsReady();
  const resting = useRestingView(view);
  const { primitives, palette, system, inch, pictures } = seen;
  const { width, height } = pad;
  const over = pictures.length === 0 ? 'paper' : 'pictures';
  const under = useMemo(() => {
    if (width === 0 || height === 0 || pictures.length === 0) return [];
    return [takeUnder({ pictures, palette }, resting, { width, height })];
  }, [pictures, palette, resting, width, height]);
  const drawn = useMemo(() => {
    if (width === 0 || height === 0) return [];
    const still = { primitives, palette, system, inch, lettered, over } as const;
    return [takeSnapshot(still, resting, { width, height })];
  }, [primitives, palette, system, inch, lettered, over, resting, width, height]);
  return [...under, ...drawn];
};
