import type { Random } from '../random.ts';

/** Bytes spoilt in one way. */
export type ByteMutation = (bytes: Uint8Array, random: Random) => Uint8Array;

/** A text spoilt in one way. */
export type TextMutation = (text: string, random: Random) => string;
