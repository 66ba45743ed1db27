import { phrase } from '../phrases/phrase.ts';

/**
 * What a page for a customer says whatever is drawn on it, in plain words and in the order in which it is
 * printed: who marks what lies buried, who knows where the lot ends, and whose rules come first.
 */
export const customerCautions: readonly string[] = [
  phrase`Buried lines are marked before anything is dug; in the United States a call to 811 has that done. Lines of the owner’s own, to a pool, a shed or a sprinkler, are not marked by that call: please point them out.`,
  phrase`Where the lot ends is for its owner to confirm. This drawing is no boundary survey.`,
  phrase`Rules and permits for fences are as the local code has them. Where anything here differs from the local code, or from what a licensed professional decides, that comes first.`,
];
