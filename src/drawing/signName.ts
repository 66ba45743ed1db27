/**
 * Small marks of the plan: a `shot` of known height, the pin of a post that is `held` by hand, and
 * the place at which a leaf comes nearest to the ground.
 */
export type SignName = 'shot' | 'held' | 'low';
