/** What the head of a picture says of it: pixels as they are stored; a photo may be told to be turned. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** Whether it carries what a camera or program wrote of it: how it is turned, maybe where it was taken. */
  readonly notes: boolean;
}
