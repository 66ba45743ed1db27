import { phraseOf } from '../phrases/phrase.ts';

/**
 * Things of the pad as a hand is told of them in a sentence: `Drag the building`. Another language puts its
 * article before them, for which there is no hole.
 */
export const theThing = {
  building: phraseOf('the')`building`,
  paving: phraseOf('the')`paving`,
  'piece of paving': phraseOf('the')`piece of paving`,
  pool: phraseOf('the')`pool`,
  'keep-out': phraseOf('the')`keep-out`,
  boundary: phraseOf('the')`boundary`,
  'height zone': phraseOf('the')`height zone`,
  'sight triangle': phraseOf('the')`sight triangle`,
  'front yard': phraseOf('the')`front yard`,
  utility: phraseOf('the')`utility`,
  'utility line': phraseOf('the')`utility line`,
  tree: phraseOf('the')`tree`,
  note: phraseOf('the')`note`,
  line: phraseOf('the')`line`,
  leg: phraseOf('the')`leg`,
  gate: phraseOf('the')`gate`,
  mark: phraseOf('the')`mark`,
  post: phraseOf('the')`post`,
  pin: phraseOf('the')`kept-clear ground`,
  tape: phraseOf('the')`tape`,
  shot: phraseOf('the')`grade shot`,
  underlay: phraseOf('the')`picture`,
  feature: phraseOf('the')`feature`,
} as const satisfies Readonly<Record<string, string>>;

/** A thing that a hand is told of. */
export type Thing = keyof typeof theThing;
