import type { Inches } from '../../units/inches.ts';
import type { MarkId } from '../ids.ts';
import type { Site } from '../site.ts';
import { tapeBetween } from '../tapeBetween.ts';
import { addObservation } from './addObservation.ts';
import { changeObservation } from './changeObservation.ts';

/**
 * Says what the tape reads between two marks: the first tape that is there between them, whichever
 * way it was pulled, reads so from now on; where there is none it is added. RangeError for marks
 * that are not there, one mark twice, a length of zero or less.
 */
export const setTape = (site: Site, from: MarkId, to: MarkId, length: Inches): Site => {
  const found = tapeBetween(site, from, to);
  return found === null
    ? addObservation(site, { kind: 'tape', from, to, length, trust: null, label: '' })
    : changeObservation(site, found.id, { length });
};
