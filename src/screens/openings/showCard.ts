import type { GateId } from '../../site/ids.ts';

/** The element of a gate's card on the page. */
export const cardAt = (id: GateId): string => `opening-${id}`;

/** Brings the card of a gate to the top of the screen and the keyboard to it. */
export const showCard = (id: GateId): void => {
  const card = document.getElementById(cardAt(id));
  card?.scrollIntoView({ block: 'start' });
  card?.focus({ preventScroll: true });
};
