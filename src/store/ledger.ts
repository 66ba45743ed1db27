import { isPlain } from '../site/isPlain.ts';
import { bytesOf } from './change.ts';
import type { JobId } from './jobId.ts';
import type { JobHead, JobRecord, JobWrite, Stamp } from './jobShelf.ts';
import { documentAt, lastOf, movedTo, stepTo, type Step, type Trail } from './trail.ts';
import { picturesIn, picturesUnder, wordsOf } from './wordsOf.ts';

/** What a window knows of a job: its trail, and how much of it is on its way to the shelf. */
export interface Ledger {
  readonly head: JobHead;
  readonly trail: Trail;
  /** The write that was sent last, and the one that is known to lie there; null for none. */
  readonly sent: Stamp | null;
  readonly there: Stamp | null;
  /** Whether what was sent is all that the trail has. */
  readonly sound: boolean;
  /** Bytes of the whole document that lies there. */
  readonly baseBytes: number;
}

/** Bytes of steps after which the whole document is written again, if it is no longer. Ours. */
const fewBytes = 65_536;

/** The ledger of a job that is not on the shelf yet. */
export const freshLedger = (
  id: JobId,
  trail: Trail,
  { under, now }: { readonly under: JobId | null; readonly now: number },
): Ledger => ({
  head: {
    id,
    writes: 0,
    by: '',
    ...wordsOf(trail.present),
    made: now,
    worked: now,
    binned: null,
    begun: trail.begun,
    first: trail.first,
    at: trail.at,
    last: lastOf(trail),
    base: trail.at,
    pictures: [],
    wanted: [],
    under,
  },
  trail,
  sent: null,
  there: null,
  sound: false,
  baseBytes: 0,
});

const isStep = (value: unknown): value is Step =>
  isPlain(value) && typeof value['label'] === 'string' && Array.isArray(value['change']);

/**
 * The ledger of a job from what lies on the shelf. Steps that are not there, and all that lie beyond
 * them, are left out; such a ledger is not sound. Null where there is no document.
 */
export const readLedger = ({ head, document, steps }: JobRecord): Ledger | null => {
  if (!isPlain(document)) return null;
  const whole = (version: number): boolean => isStep(steps.get(version));
  let [first, last] = [head.base, head.base];
  while (first > head.first && whole(first)) first -= 1;
  while (last < head.last && whole(last + 1)) last += 1;
  const found = Array.from({ length: last - first }, (_, n) => steps.get(first + 1 + n) as Step);
  const cut = first === head.first ? head.begun : steps.get(first);
  const trail: Trail = {
    begun: typeof cut === 'string' ? cut : isStep(cut) ? cut.label : 'Open kept drawing',
    first,
    steps: found,
    at: head.base,
    present: document,
    bytes: found.reduce((all, { bytes }) => all + bytes, 0),
  };
  const at = Math.max(first, Math.min(last, head.at));
  const sound = first === head.first && last === head.last && at === head.at;
  const baseBytes = bytesOf(document);
  return { head, trail: movedTo(trail, at), sent: head, there: head, sound, baseBytes };
};

const headOf = ({ head, sent }: Ledger, trail: Trail, base: number): Omit<JobHead, 'by'> => {
  const pictures = [...new Set([...head.pictures, ...picturesIn(trail.present)])];
  const wanted = [...new Set([...head.wanted, ...picturesUnder(trail.present)])];
  const { begun, first, at } = trail;
  const place = { begun, first, at, last: lastOf(trail), base };
  return {
    ...head,
    ...wordsOf(trail.present),
    ...place,
    pictures,
    wanted,
    writes: (sent?.writes ?? 0) + 1,
  };
};

const bytesBetween = (trail: Trail, from: number, to: number): number => {
  let bytes = 0;
  for (let at = from + 1; at <= to; at += 1) bytes += stepTo(trail, at)?.bytes ?? 0;
  return bytes;
};

/** Whether the document that lies there no longer serves: gone with its steps, or too far from the present. */
const isBaseDue = ({ head, baseBytes }: Ledger, before: Trail, trail: Trail): boolean => {
  const { base } = head;
  const stepped = trail.at > before.at && stepTo(trail, trail.at) !== stepTo(before, trail.at);
  if (base < trail.first || base > lastOf(trail) || (stepped && base > before.at)) return true;
  return bytesBetween(trail, base, trail.at) > Math.max(fewBytes, baseBytes);
};

/** A ledger with the write that brings the shelf to it. */
export interface Sending {
  readonly ledger: Ledger;
  readonly write: JobWrite;
}

/** What goes along, when it is, and which window writes. */
export type Extra = Pick<JobWrite, 'desk'> & Pick<JobHead, 'by'> & { readonly now: number };

/** Everything of a job, written anew. */
export const sendingWhole = (ledger: Ledger, trail: Trail, extra: Extra): Sending => {
  const versions = trail.steps.map((step, n) => [trail.first + n + 1, step] as const);
  // what was sent and did not come there is no longer waited for
  const { desk, by, now } = extra;
  const last =
    (ledger.sent?.writes ?? 0) > (ledger.there?.writes ?? 0) ? ledger.sent : ledger.there;
  const head = { ...headOf({ ...ledger, sent: last }, trail, trail.at), by, worked: now };
  return {
    ledger: {
      head,
      trail,
      sent: head,
      there: ledger.there,
      sound: true,
      baseBytes: bytesOf(trail.present),
    },
    write: {
      head,
      after: ledger.there,
      where: 'anywhere',
      document: trail.present,
      desk,
      gone: [[-Infinity, Infinity]],
      steps: new Map(versions),
    },
  };
};

/** Only what differs between the trail that was sent last and this one, which follows from it by one move. */
export const sendingMove = (ledger: Ledger, trail: Trail, extra: Extra): Sending => {
  if (!ledger.sound || ledger.sent === null) return sendingWhole(ledger, trail, extra);
  const { trail: before, head: old } = ledger;
  const due = isBaseDue(ledger, before, trail);
  const head = {
    ...headOf(ledger, trail, due ? trail.at : old.base),
    by: extra.by,
    worked: trail === before ? old.worked : extra.now,
  };
  const step = stepTo(trail, trail.at);
  const fresh = step !== undefined && step !== stepTo(before, trail.at);
  const gone: (readonly [number, number])[] = [];
  if (trail.first > before.first) gone.push([-Infinity, trail.first]);
  if (lastOf(trail) < lastOf(before)) gone.push([lastOf(trail) + 1, Infinity]);
  const document = due ? documentAt(trail, trail.at) : null;
  return {
    ledger: {
      ...ledger,
      head,
      trail,
      sent: head,
      baseBytes: document === null ? ledger.baseBytes : bytesOf(document),
    },
    write: {
      head,
      after: ledger.sent,
      where: 'there',
      document,
      gone,
      desk: extra.desk,
      steps: new Map(fresh ? [[trail.at, step]] : []),
    },
  };
};
