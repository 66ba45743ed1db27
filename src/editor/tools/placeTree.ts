import { placeSpot } from './placeSpot.ts';

/** Sets a tree with the trunk and roots that the session plans. */
export const placeTree = placeSpot({
  noun: 'tree',
  fields: ({ tree }) => ({ kind: 'tree', label: '', ...tree }),
  radius: ({ tree }) => Math.max(tree.trunk, tree.roots),
});
