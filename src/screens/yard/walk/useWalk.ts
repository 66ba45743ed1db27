import { useCallback, useEffect, useMemo, useReducer, useState } from 'react';
import { isWatching, placeOfWalk, walked } from '../../../editor/walk/walk.ts';
import type { WalkEnd, WalkEvent, WalkState } from '../../../editor/walk/walk.ts';
import { toSite } from '../../../editor/view.ts';
import { readPosition } from '../../../engine/walk/readPosition.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import type { Origin } from '../../../site/origin.ts';
import { current } from '../../../store/history.ts';
import { useBench, useSitePart, type Bench } from '../../bench.ts';
import { walkPlace, type WalkPlace } from './walkPlace.ts';
import { patience } from './walkText.ts';

/** A walk with a position: what it is doing, and where that is on the drawing. */
export interface Walk {
  readonly state: WalkState;
  /** Null while there is no position, and until the map projections have come. */
  readonly place: WalkPlace | null;
  readonly send: (event: WalkEvent) => void;
  /** Starts to ask for positions; the browser asks whether it may tell them. */
  readonly start: () => void;
}

type Earth = (typeof import('./earth.ts'))['earth'];

const asking: PositionOptions = {
  enableHighAccuracy: true,
  maximumAge: 0,
  timeout: patience * 1000,
};

/** Why no position can be had at all; null where it can be asked for. */
const noneBecause = (): WalkEnd | null => {
  if (!window.isSecureContext) return 'insecure';
  return 'geolocation' in navigator ? null : 'none';
};

const faultEvent = ({ code }: GeolocationPositionError): WalkEvent => {
  // the codes of W3C Geolocation: 1 permission denied, 2 position unavailable, 3 timeout
  if (code === 1) return { do: 'end', why: 'denied' };
  return { do: 'lack', lack: code === 3 ? 'timeout' : 'unavailable' };
};

/** The point of the ground in the middle of what is seen. */
const middleOf = ({ session, pad }: Bench): SitePoint => {
  const { width, height } = pad.getState() ?? { width: 0, height: 0 };
  return toSite(session.getState().view, { x: width / 2, y: height / 2 });
};

/** Follows the device while it is asked to, and no longer than the page is seen. */
export const useWalk = (): Walk => {
  const bench = useBench();
  const origin = useSitePart((site) => site.origin);
  const [state, send] = useReducer(walked, { is: 'off', why: null });
  const [earth, setEarth] = useState<Earth | null>(null);
  // a drawing without a place on earth is taken to have one from the first position on
  const [taken, setTaken] = useState<Origin | null>(null);
  const watching = isWatching(state);
  useEffect(() => {
    if (!watching || earth === null) return undefined;
    const hear = (told: GeolocationPosition): void => {
      const position = readPosition(told.coords);
      if (!position.ok) return send({ do: 'lack', lack: 'unreadable' });
      if (current(bench.site.getState().history).origin === null) {
        setTaken((was) => was ?? earth.originAt(position.value, middleOf(bench)));
      }
      send({ do: 'position', position: position.value });
    };
    const fault = (why: GeolocationPositionError): void => send(faultEvent(why));
    const watch = navigator.geolocation.watchPosition(hear, fault, asking);
    return () => navigator.geolocation.clearWatch(watch);
  }, [watching, earth, bench]);
  useEffect(() => {
    const look = () => send({ do: document.visibilityState === 'hidden' ? 'hide' : 'show' });
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, []);
  const start = useCallback(() => {
    const why = noneBecause();
    if (why !== null) return send({ do: 'end', why });
    send({ do: 'start' });
    import('./earth.ts').then(
      (module) => setEarth(module.earth),
      () => send({ do: 'end', why: 'unloaded' }),
    );
  }, []);
  const place = useMemo(() => {
    const [position, about] = [placeOfWalk(state), origin ?? taken];
    if (position === null || about === null || earth === null) return null;
    return walkPlace(earth.planeAbout, about, position);
  }, [state, origin, taken, earth]);
  return { state, place, send, start };
};
