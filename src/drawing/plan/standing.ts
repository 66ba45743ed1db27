import type { Site } from '../../site/site.ts';

/** What it follows from on which marks anything stands, and which of them are rough. */
export const standing = ({ marks, lines, features, observations }: Site): readonly unknown[] => [
  marks,
  lines,
  features,
  observations,
];
