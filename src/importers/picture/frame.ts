/** What the head of a picture says of it: pixels as they are stored; a photo may be told to be turned. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** Whether it carries what the camera wrote of it (Exif): how it is turned, and maybe where it was taken. */
  readonly exif: boolean;
}
