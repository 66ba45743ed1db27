/** How the pad is seen: CSS pixels for an inch of ground, and where ground (0, 0) is on screen. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}
