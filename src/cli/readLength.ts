import type { Inches } from '../units/inches.ts';
import { read, type Parsed } from '../units/parsed.ts';
import { valuesOf, type Call } from './call.ts';
import { readLengths } from './readLengths.ts';

/** Reads the length that an option was given, above zero; null where it was not given. */
export const readLength = (call: Call, name: string): Parsed<Inches | null> => {
  const lengths = readLengths(name, valuesOf(call, name));
  return lengths.ok ? read(lengths.value[0] ?? null) : lengths;
};
