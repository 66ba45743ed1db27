/** An upright rectangle on the paper: its upper left corner, inches, y down. */
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A rectangle made smaller by a margin on every side, never turned inside out. */
export const inset = ({ x, y, width, height }: Rect, margin: number): Rect => {
  const [across, down] = [Math.min(margin, width / 2), Math.min(margin, height / 2)];
  return { x: x + across, y: y + down, width: width - 2 * across, height: height - 2 * down };
};
