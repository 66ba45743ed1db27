import { phrase } from '../phrases/phrase.ts';

/** Why something failed, as one line of 160 characters at most. */
export const told = (error: unknown): string => {
  const text = error instanceof Error ? error.message : String(error);
  return text.replace(/\s+/g, ' ').trim().slice(0, 160) || phrase`no reason given`;
};
