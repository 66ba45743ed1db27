/** What a bench asks of the page with the pad. Places in CSS pixels of the page. */
export interface TimedPad {
  /** Puts a yard of so many posts on the pad, all of it in sight; how many posts it has. */
  readonly load: (posts: number) => Promise<number>;
  /** The middle of the pad. */
  readonly middle: () => { readonly x: number; readonly y: number };
  /** The middle of the opening of a gate, by the number of its fence line. */
  readonly gate: (line: number) => { readonly x: number; readonly y: number };
  /** Moves the view by so many pixels, or zooms it about the middle. */
  readonly move: (by: { readonly x: number; readonly y: number; readonly times: number }) => void;
  /**
   * Lays a plain canvas over the pad that paints the same scene at once, and again whenever a pointer moves over
   * it; 'away' takes it away.
   */
  readonly plain: (is: 'there' | 'away') => void;
  /** Paints the plain canvas once. */
  readonly paintPlain: () => void;
  /** Bytes that the atoms of the scene take as numbers in typed arrays, letters as UTF-16. */
  readonly typedBytes: () => number;
}

declare global {
  interface Window {
    timedPad: TimedPad;
  }
}
