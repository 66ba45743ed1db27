/** CSS pixels for a paper inch on the pad, by the light: larger letters for full sun. */
export const padInch = { day: 96, dark: 96, sun: 112 } as const;
