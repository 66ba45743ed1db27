import type { UnderlayId } from '../site/ids.ts';
import type { Site } from '../site/site.ts';
import { phrase } from '../phrases/phrase.ts';

/** What a hand is told that would lay or erase a picture that is locked. */
export const lockedLine = phrase`This picture is locked: unlock it on its card first`;

/** Whether a picture under the drawing is there and locked. */
export const isLocked = (site: Site, id: UnderlayId): boolean =>
  site.underlays[id]?.locked === true;
