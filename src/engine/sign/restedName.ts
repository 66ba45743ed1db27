import { joined, phrase, phraseOf } from '../../phrases/phrase.ts';

/** The words of which the names in a sign-off are made up; documents keep them as they are here. */
const words: Readonly<Record<string, string>> = {
  'opening to hold': phrase`opening to hold`,
  way: phraseOf('signed')`way`,
  'opens by': phrase`opens by`,
  stop: phraseOf('signed')`stop`,
  overlap: phrase`overlap`,
  counterbalance: phrase`counterbalance`,
  'roller posts apart': phrase`roller posts apart`,
  'behind the fence': phrase`behind the fence`,
  clear: phraseOf('signed')`clear`,
  'width at the top': phrase`width at the top`,
  'width in the middle': phrase`width in the middle`,
  'width at the bottom': phrase`width at the bottom`,
  'width known from': phrase`width known from`,
  height: phrase`height`,
  'frame OD': phrase`frame OD`,
  'opens to': phrase`opens to`,
  hinge: phrase`hinge`,
  latch: phrase`latch`,
  closer: phrase`closer`,
  low: phraseOf('signed')`low`,
  planned: phraseOf('signed')`planned`,
  high: phraseOf('signed')`high`,
  spread: phraseOf('signed')`spread`,
  'known from': phrase`known from`,
  'fits posts from': phrase`fits posts from`,
  'fits posts to': phrase`fits posts to`,
  'fits frames from': phrase`fits frames from`,
  'fits frames to': phrase`fits frames to`,
  'face to pin': phrase`face to pin`,
  'post OD': phrase`post OD`,
  'hinge post OD': phrase`hinge post OD`,
  'latch post OD': phrase`latch post OD`,
  'leaf bottom over the ground': phrase`leaf bottom over the ground`,
};

/** What is kept as a word and not as a name that somebody gave. */
const values: Readonly<Record<string, string>> = {
  'not said': phrase`not said`,
  left: phrase`left`,
  right: phrase`right`,
  measured: phrase`measured`,
  copied: phrase`copied`,
  catalogue: phrase`catalogue`,
  book: phrase`hardware book`,
  assumed: phrase`assumed`,
  uncertain: phrase`uncertain`,
  adjustable: phrase`adjustable`,
  swing: phrase`swing`,
  'centre stop': phrase`centre stop`,
  cantilever: phrase`cantilever`,
  gap: phraseOf('signed')`gap`,
};

const wordOf = (table: Readonly<Record<string, string>>, text: string): string =>
  Object.hasOwn(table, text) ? (table[text] ?? text) : text;

/** A part of what an opening rests on, as a reader calls it; leaves by the names that are given for their ids. */
export const restedName = (what: string, leaves: ReadonlyMap<string, string>): string =>
  joined(
    what.split(', ').map((part) => leaves.get(part) ?? wordOf(words, part)),
    ', ',
  );

/** A value of it: names of parts as they were given, all else in words. */
export const restedValue = (what: string, value: string): string =>
  /(?:^|, )(?:hinge|latch|closer)$/.test(what) ? value : wordOf(values, value);
