import { useLayoutEffect, useRef, type RefObject } from 'react';

/** A place that holds a value as it was last rendered, for listeners that outlive a render. */
export const useLatest = <T>(value: T): RefObject<T> => {
  const latest = useRef(value);
  useLayoutEffect(() => {
    latest.current = value;
  });
  return latest;
};
