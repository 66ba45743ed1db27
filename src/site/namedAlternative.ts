import { quoted } from './quoted.ts';

/** The name of an alternative as it is kept, without blanks about it. RangeError for one of blanks alone. */
export const namedAlternative = (label: string): string => {
  const name = label.trim();
  if (name !== '') return name;
  throw new RangeError(`name: expected what to call this way to build it, found ${quoted(label)}`);
};
