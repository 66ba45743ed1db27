import { createStore } from 'zustand/vanilla';

/** One value that can be watched, kept nowhere; `setState(value, true)` puts another in its place. */
export const createCell = <Value>(value: Value) => createStore<Value>()(() => value);

export type Cell<Value> = ReturnType<typeof createCell<Value>>;
