import type { GateId } from '../../../site/ids.ts';

/** The element of a gate's set record on the page. */
export const recordAt = (id: GateId): string => `as-set-${id}`;

/** Opens the set record of a gate, brings it to the top of the screen, and types into it. */
export const showRecord = (id: GateId): void => {
  const fold = document.getElementById(recordAt(id));
  if (!(fold instanceof HTMLDetailsElement)) return;
  fold.open = true;
  fold.scrollIntoView({ block: 'start' });
  fold.querySelector('input')?.focus({ preventScroll: true });
};
