/** Keys that change what a pointer does while they are held, as the browser names them. */
export const heldKeys = {
  /** The pointer moves the pad. */
  pan: ' ',
  /** Nothing is snapped to. */
  free: 'Shift',
} as const;
