/** Whether the device is worked with a finger, which wants large keys in place of its own. */
export const underFinger = (): boolean => window.matchMedia('(pointer: coarse)').matches;
