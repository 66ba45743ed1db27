import { expect, it } from 'vitest';
import { hangingNotes } from '../../src/trade/hangingNotes.ts';
import { hingeSets } from '../../src/trade/hingeSets.ts';

it('[T14] a leaf hangs on as many hinge sets as the hanging notes tell the crew', () => {
  const [note] = hangingNotes.filter(({ text }) => text.includes('hinge sets'));
  const words = ['No', 'One', 'Two', 'Three'];
  expect(note?.text.split(' ')[0]).toBe(words[hingeSets.perLeaf]);
  expect(hingeSets.source.status).toBe('practice');
});
