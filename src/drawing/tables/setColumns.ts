import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** What heads each column of the form that a set record is written in. */
export const setHeadings = {
  opening: phrase`Opening`,
  hold: phraseOf('heading')`Hold`,
  range: phrase`From – to`,
  top: phraseOf('opening')`Top`,
  middle: phraseOf('opening')`Middle`,
  bottom: phraseOf('opening')`Bottom`,
  by: phraseOf('person')`By`,
  on: phraseOf('day')`On`,
  'first lean': phrase`First post leans in`,
  'second lean': phrase`Second post leans in`,
  remark: phrase`Remark`,
  leaf: phrase`Leaf`,
  hinges: phrase`Hinges take`,
  post: phrase`Post`,
  what: phrase`What`,
  reads: phrase`Tape reads`,
  'set at': phrase`Set at`,
  deep: phrase`Deep`,
  'dug to': phrase`Dug to`,
  plumb: phrase`Plumb`,
  note: phrase`Note`,
} as const;

/** A column of the form that a set record is written in. */
export type SetColumn = keyof typeof setHeadings;
