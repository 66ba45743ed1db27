import type { Pressed } from './keyRow.ts';

/** What a browser tells of a key, reduced to what rows of keys go by. */
export const pressedOf = (
  event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey'>,
): Pressed => ({
  key: event.key,
  command: event.ctrlKey || event.metaKey,
  shift: event.shiftKey,
});
