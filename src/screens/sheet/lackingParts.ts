import { phrase } from '../../phrases/phrase.ts';

/** Why a worker could not be started, or ended by itself. */
export const lackingParts = (): string =>
  phrase`its parts are not on this device yet, or there is no room`;
