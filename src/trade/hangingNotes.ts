import { phrase } from '../phrases/phrase.ts';

/** What must be so of a gate for a note to be printed on its detail. */
export type NoteFor =
  'leaf that turns' | 'wide leaf' | 'two leaves' | 'drop rod' | 'leaf that rolls';

/** One thing to mind when a gate is hung. */
export interface HangingNote {
  readonly for: NoteFor;
  readonly text: string;
}

/** In the order in which the work is done. Common practice, no published source. */
export const hangingNotes: readonly HangingNote[] = [
  {
    for: 'leaf that turns',
    text: phrase`Two hinge sets to a leaf, one near the top and one near the bottom.`,
  },
  {
    for: 'leaf that turns',
    text: phrase`Hinge and latch bolts all point one way, their nuts on the secure side.`,
  },
  {
    for: 'wide leaf',
    text: phrase`A leaf 5 ft or wider on corner fittings has an adjustable truss rod of 5/16 in or more (ASTM F900-11 4.1), and no panel wider than 5 ft between uprights (ASTM F654-03 5.1.1).`,
  },
  {
    for: 'two leaves',
    text: phrase`Tops of both leaves level with each other before anything is tightened.`,
  },
  {
    for: 'leaf that turns',
    text: phrase`Swing every leaf as far as it opens: its bottom clears the ground all the way.`,
  },
  {
    for: 'drop rod',
    text: phrase`Lifted, the rod rests clear of the ground through the whole swing.`,
  },
  {
    for: 'drop rod',
    text: phrase`Close both leaves and look along them: straight, then mark and make the receiver.`,
  },
  {
    for: 'leaf that rolls',
    text: phrase`Roller posts plumb and in line with each other before the leaf is put on.`,
  },
  {
    for: 'leaf that rolls',
    text: phrase`Roll the leaf from end to end: it stays on both rollers, and its stops hold at both ends.`,
  },
];

/** The notes for a gate of which some things are so. */
export const notesFor = (so: ReadonlySet<NoteFor>): readonly string[] =>
  hangingNotes.filter((note) => so.has(note.for)).map(({ text }) => text);
