import type { PartKind } from './part.ts';

/**
 * Fields that mean something together only, by the name of the one field that they are merged as. Two people
 * who each change one of a group have changed the same.
 */
export const groups: Readonly<
  Partial<Record<PartKind, Readonly<Record<string, readonly string[]>>>>
> = {
  marks: { place: ['x', 'y'] },
  shots: { place: ['x', 'y'] },
  gates: { place: ['line', 'leg', 'anchor'], closes: ['way', 'latch', 'asSet', 'leaves'] },
  pins: { place: ['line', 'leg', 'anchor'] },
  leaves: { widths: ['widths', 'from', 'on'] },
  hardware: { sizes: ['kind', 'takes', 'spread', 'from', 'on', 'readings', 'pin'] },
  townRules: { asks: ['measure', 'limit', 'words'] },
  underlays: { lies: ['picture', 'file', 'width', 'height', 'ties', 'size'] },
  acceptances: { accepted: ['rule', 'on', 'said', 'reason', 'by', 'day'] },
  pictures: { bytes: ['type', 'data'] },
  lengths: { written: ['system', 'fraction'] },
};

/** Fields of which all but these are one reading, since what it reads depends on its kind. */
export const besideReading = ['label', 'trust'] as const;
