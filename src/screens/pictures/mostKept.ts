/** Pixels on the longer side of what is kept of a picture, and bytes of one that is kept as it came. */
export const mostKept = { side: 4096, bytes: 4_000_000 } as const;
