/** Every tool of the yard, by the name that the session keeps. */
export const toolIds = [
  'select',
  'pan',
  'fence',
  'gate',
  'building',
  'boundary',
  'paving',
  'pool',
  'keep-out',
  'sight triangle',
  'front yard',
  'utility',
  'tree',
  'shot',
  'tape',
  'mark',
  'note',
  'picture',
] as const;

export type ToolId = (typeof toolIds)[number];
