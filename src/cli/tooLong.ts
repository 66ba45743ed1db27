import { farthest } from '../geometry/tolerance.ts';
import type { Inches } from '../units/inches.ts';
import { unread, type Parsed } from '../units/parsed.ts';
import { quotedText } from '../units/quotedText.ts';
import { phrase } from '../phrases/phrase.ts';

/** The refusal of a length, in inches, that no site could hold (ten miles); null for any other. */
export const tooLong = (name: string, text: string, length: Inches): Parsed<never> | null =>
  length > farthest
    ? unread(phrase`--${name}: ${quotedText(text)} is too long: expected at most ten miles`)
    : null;
