import type { Feature } from './feature.ts';

/** How many marks a feature needs: one for a tree or note, three round ground, two along a line. */
export const leastMarks = (feature: {
  readonly kind: Feature['kind'];
  readonly closed?: boolean;
}): number => {
  if (feature.kind === 'tree' || feature.kind === 'note') return 1;
  const open = feature.kind === 'utility' || (feature.kind === 'boundary' && !feature.closed);
  return open ? 2 : 3;
};
