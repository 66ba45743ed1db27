import { useSyncExternalStore } from 'react';

/** The part of a store that a screen needs to read it. */
interface Readable<State> {
  readonly getState: () => State;
  readonly subscribe: (heard: () => void) => () => void;
}

/**
 * A part of a store's state; the screen is drawn again when that part is another. `pick` has to
 * give back a part as it is, not a new object made from it.
 */
export const useStored = <State, Part>(
  store: Readable<State>,
  pick: (state: State) => Part,
): Part => {
  const read = (): Part => pick(store.getState());
  // the third is read where a screen is written out as text
  return useSyncExternalStore(store.subscribe, read, read);
};
