/**
 * Small marks of the plan: a `shot` of known height, the pin of a post that is `held` by hand, the
 * place at which a leaf comes nearest to the ground, and a `mark` on which nothing stands.
 */
export type SignName = 'shot' | 'held' | 'low' | 'mark';
