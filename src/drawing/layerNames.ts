/**
 * What atoms of a page are of, so that a reader of the file can turn them off: the sheet with its
 * frame and tables, the yard, fence with its posts and gates, dimensions, names and numbers, flags.
 */
export const layerNames = ['sheet', 'yard', 'fence', 'dimensions', 'names', 'flags'] as const;

export type LayerName = (typeof layerNames)[number];
