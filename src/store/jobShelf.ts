import type { PictureId } from '../site/ids.ts';
import type { KeptDocument } from './change.ts';
import type { JobId } from './jobId.ts';
import type { Step } from './trail.ts';
import { phrase } from '../phrases/phrase.ts';

/** A job as the shelf lists it. */
export interface JobHead {
  readonly id: JobId;
  /** One higher with every write. */
  readonly writes: number;
  /** The window that wrote it last, so that whoever writes knows whether another one has written. */
  readonly by: string;
  /** What its title block says. */
  readonly name: string;
  readonly customer: string;
  readonly place: string;
  /** When it was begun, last worked on, and put into the bin; milliseconds. Null for not in the bin. */
  readonly made: number;
  readonly worked: number;
  readonly binned: number | null;
  /** The label and the number of the oldest version, and the numbers of the present and the newest. */
  readonly begun: string;
  readonly first: number;
  readonly at: number;
  readonly last: number;
  /** The number of the version that lies there as a whole document. */
  readonly base: number;
  /** Pictures that its versions keep in their file; their bytes lie on the shelf of pictures. */
  readonly pictures: readonly PictureId[];
  /** Pictures that lie under its versions, in their file or not. */
  readonly wanted: readonly PictureId[];
  /** The job that was on the pad when this one was begun over it; null for none. */
  readonly under: JobId | null;
}

/** A job as it lies on the shelf. */
export interface JobRecord {
  readonly head: JobHead;
  /** The document of version `head.base`; undefined where it is not there. */
  readonly document: unknown;
  /** Steps by the number of the version that they lead to. */
  readonly steps: ReadonlyMap<number, unknown>;
}

/** Which write of a job it was. */
export type Stamp = Pick<JobHead, 'writes' | 'by'>;

/** Whether both are the same write. */
export const sameStamp = (a: Stamp | null, b: Stamp | null): boolean =>
  a === null || b === null ? a === b : a.writes === b.writes && a.by === b.by;

/** One write of a job, all of it or nothing. */
export interface JobWrite {
  readonly head: JobHead;
  /** The write that it follows; null for a job that is not there yet. */
  readonly after: Stamp | null;
  /** Whether a job that should be there and is not is a fault, or is simply written. */
  readonly where: 'there' | 'anywhere';
  /** The whole document of version `head.base`, where that is to be written. */
  readonly document: KeptDocument | null;
  /** Steps that go, by the numbers of the versions that they lead to: from, to, both included. */
  readonly gone: readonly (readonly [from: number, to: number])[];
  readonly steps: ReadonlyMap<number, Step>;
  /** What else of the desk is written with it, by key. */
  readonly desk: Readonly<Record<string, unknown>>;
}

/** Why a write was refused by what lies on the shelf. */
export class ShelfRefusal extends Error {
  /** The write that lies there; null where none does. */
  readonly found: Stamp | null;
  constructor(found: Stamp | null) {
    super(
      found === null ? phrase`the job is no longer there` : phrase`another window has written it`,
    );
    this.name = 'ShelfRefusal';
    this.found = found;
  }
}

/** The place on the device that holds jobs. Each may fail by rejecting. */
export interface JobShelf {
  /** Of the desk: what lies beside the jobs, by key. */
  readonly readDesk: (key: string) => Promise<unknown>;
  readonly writeDesk: (values: Readonly<Record<string, unknown>>) => Promise<void>;
  readonly heads: () => Promise<readonly JobHead[]>;
  /** Null for one that is not there. */
  readonly read: (id: JobId) => Promise<JobRecord | null>;
  /**
   * Writes all or nothing, in the order of the calls. Rejects with a `ShelfRefusal` where the head that
   * lies there is not the one that was expected.
   */
  readonly write: (write: JobWrite) => Promise<void>;
  readonly remove: (ids: readonly JobId[]) => Promise<void>;
  /** Small pictures of jobs, in whatever form they were handed over. */
  readonly looks: () => Promise<ReadonlyMap<JobId, unknown>>;
  readonly writeLook: (id: JobId, look: unknown) => Promise<void>;
  /** Tells when the place was closed or taken away under the program. */
  readonly onLost: (heard: () => void) => void;
}
