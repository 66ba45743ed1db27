declare module 'cdt2d' {
  /** Corners of each triangle, by the indexes of the points. */
  const triangles: (
    points: readonly (readonly [number, number])[],
  ) => readonly (readonly [number, number, number])[];
  export { triangles as default };
}
