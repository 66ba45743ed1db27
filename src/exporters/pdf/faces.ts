/** The font of each weight, by the name that it gives itself: readers list fonts by it. */
export const faces = { regular: 'Barlow-Regular', bold: 'Barlow-SemiBold' } as const;
