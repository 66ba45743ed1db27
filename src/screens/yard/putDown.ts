import { createContext } from 'react';

/** Puts the card down where it lies over the pad, so that what happens there is seen. */
export const PutDownContext = createContext<() => void>(() => undefined);
