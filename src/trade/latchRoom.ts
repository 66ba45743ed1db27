import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** Clear ground that somebody in a wheelchair needs before a gate, come to from the front. */
export interface LatchRoom {
  /** Out from the gate. */
  readonly deep: Inches;
  /** Past the latch side of the opening. */
  readonly beyond: Inches;
}

/** On the side to which the leaf opens, where it is pulled. */
export const pullRoom: LatchRoom = { deep: inches(60), beyond: inches(18) };

/** On the other side, where it is pushed; more beside the latch where the gate has a closer too. */
export const pushRoom: LatchRoom = { deep: inches(48), beyond: inches(0) };
export const pushRoomWithCloser: LatchRoom = { deep: inches(48), beyond: inches(12) };

export const latchRoomSource: Source = {
  text: phrase`2010 ADA Table 404.2.4.1, front approach; from memory`,
  status: 'memory',
};

/** The steepest that this ground may be, rise over run. */
export const levelGround = {
  slope: 1 / 48,
  source: {
    text: phrase`2010 ADA 404.2.4.4, 1:48; from memory`,
    status: 'memory',
  } satisfies Source,
};

/** The highest that a sill may stand up, inches. */
export const highestSill = {
  length: inches(1 / 2),
  source: { text: phrase`2010 ADA 404.2.5; from memory`, status: 'memory' } satisfies Source,
};
