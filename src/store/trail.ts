import { across, bytesOf, changeBetween, type Change, type KeptDocument } from './change.ts';

/** One edit as the device keeps it: from one version of a job to the next. */
export interface Step {
  readonly label: string;
  readonly change: Change;
  /** About what the device takes for it. */
  readonly bytes: number;
}

/** The history of a job as the device keeps it: one whole document, and what was written between versions. */
export interface Trail {
  /** The label of the oldest version. */
  readonly begun: string;
  /** The number of the oldest version; one that comes later is one higher. */
  readonly first: number;
  /** Step n leads from version `first + n` to the next. */
  readonly steps: readonly Step[];
  /** The number of the present version. */
  readonly at: number;
  readonly present: KeptDocument;
  /** The bytes of all steps together. */
  readonly bytes: number;
}

/** A trail of one version. */
export const begunTrail = (document: KeptDocument, label: string): Trail => ({
  begun: label,
  first: 0,
  steps: [],
  at: 0,
  present: document,
  bytes: 0,
});

/** The number of the newest version, which redo leads to. */
export const lastOf = ({ first, steps }: Trail): number => first + steps.length;

/** The step that leads to a version; undefined for the oldest, and for one that is not there. */
export const stepTo = ({ first, steps }: Trail, version: number): Step | undefined =>
  steps[version - first - 1];

const sum = (steps: readonly Step[]): number => steps.reduce((all, { bytes }) => all + bytes, 0);

/** A trail with one version more, after the present; what could be done again is forgotten. */
export const stepped = (trail: Trail, document: KeptDocument, label: string): Trail => {
  const change = changeBetween(trail.present, document);
  const done = trail.at - trail.first;
  const step: Step = { label, change, bytes: bytesOf(change) + label.length };
  const bytes = trail.bytes - sum(trail.steps.slice(done)) + step.bytes;
  const steps = [...trail.steps.slice(0, done), step];
  return { ...trail, steps, bytes, at: trail.at + 1, present: document };
};

/** The document of another version of a trail. RangeError where it has no such version. */
export const documentAt = (trail: Trail, version: number): KeptDocument => {
  if (version < trail.first || version > lastOf(trail)) {
    throw new RangeError(`version ${version}: expected ${trail.first} to ${lastOf(trail)}`);
  }
  let document = trail.present;
  for (let at = trail.at; at > version; at -= 1) {
    document = across(document, stepTo(trail, at)?.change ?? [], 'back');
  }
  for (let at = trail.at; at < version; at += 1) {
    document = across(document, stepTo(trail, at + 1)?.change ?? [], 'forth');
  }
  return document;
};

/** A trail with another of its versions as the present. */
export const movedTo = (trail: Trail, version: number): Trail =>
  version === trail.at ? trail : { ...trail, at: version, present: documentAt(trail, version) };

/** A trail without its oldest versions, so many of them that lie before the present. */
export const withoutOldest = (trail: Trail, count: number): Trail => {
  const gone = Math.min(count, trail.at - trail.first);
  if (gone <= 0) return trail;
  const steps = trail.steps.slice(gone);
  const begun = trail.steps[gone - 1]?.label ?? trail.begun;
  return { ...trail, begun, first: trail.first + gone, steps, bytes: sum(steps) };
};

/**
 * How many of the oldest steps have to go for a trail to take no more than `most` bytes: none where it
 * does not, else so many that a quarter is free again, but never one after the present.
 */
export const tooOld = (trail: Trail, most: number): number => {
  if (trail.bytes <= most) return 0;
  const before = trail.at - trail.first;
  let [rest, gone] = [trail.bytes, 0];
  while (gone < before && rest > most * 0.75) {
    rest -= trail.steps[gone]?.bytes ?? 0;
    gone += 1;
  }
  return gone;
};
