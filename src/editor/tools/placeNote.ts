import { placeSpot } from './placeSpot.ts';

/** Sets an empty note; what it says is written on its card. */
export const placeNote = placeSpot({
  noun: 'note',
  fields: () => ({ kind: 'note', label: '', text: '' }),
  radius: () => 0,
});
