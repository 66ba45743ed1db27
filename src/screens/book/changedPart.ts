import type { Hardware } from '../../site/hardware.ts';
import { partFault, type PartWords } from '../../site/partFault.ts';

/** A part with some fields changed; or the one line for the field. */
export type ChangedPart =
  | { readonly part: Hardware; readonly fault: null }
  | { readonly part: null; readonly fault: string };

/**
 * Changes fields of a part if they make sense together. What was wrong with it before does not keep
 * other fields from being changed.
 */
export const changedPart = (
  part: Hardware,
  fields: Partial<Hardware>,
  words: PartWords,
): ChangedPart => {
  const next = { ...part, ...fields };
  const fault = partFault(next, words);
  if (fault === null || fault === partFault(part, words)) return { part: next, fault: null };
  return { part: null, fault };
};
