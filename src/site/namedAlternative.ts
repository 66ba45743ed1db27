import { quoted } from './quoted.ts';
import { phrase } from '../phrases/phrase.ts';

/** The name of an alternative as it is kept, without blanks about it. RangeError for one of blanks alone. */
export const namedAlternative = (label: string): string => {
  const name = label.trim();
  if (name !== '') return name;
  throw new RangeError(
    phrase`name: expected what to call this way to build it, found ${quoted(label)}`,
  );
};
