import type { JobId } from '../../src/store/jobId.ts';
import {
  sameStamp,
  ShelfRefusal,
  type JobHead,
  type JobShelf,
  type JobWrite,
} from '../../src/store/jobShelf.ts';
import type { PictureBytes } from '../../src/store/picturesApart.ts';

/** What lies on a shelf in memory. */
export interface Lying {
  desk: Map<string, unknown>;
  heads: Map<JobId, JobHead>;
  documents: Map<JobId, unknown>;
  steps: Map<JobId, Map<number, unknown>>;
  looks: Map<JobId, unknown>;
}

const empty = (): Lying => ({
  desk: new Map(),
  heads: new Map(),
  documents: new Map(),
  steps: new Map(),
  looks: new Map(),
});

/**
 * A shelf in memory that does what the one on the device promises: values are copied, a write holds
 * whole or not at all, and one that was not expected is refused. `fault` makes the next writes fail.
 */
export const memoryShelf = () => {
  let lying = empty();
  const writes: JobWrite[] = [];
  let fault: Error | null = null;
  let lost: () => void = () => undefined;
  const apply = (write: JobWrite): void => {
    const { head, after, where, document, gone, steps, desk } = structuredClone(write);
    const there = lying.heads.get(head.id);
    const isOther = there !== undefined && !sameStamp(there, after);
    const isGone = there === undefined && after !== null && where === 'there';
    if (isOther || isGone) throw new ShelfRefusal(there ?? null);
    const kept = lying.steps.get(head.id) ?? new Map<number, unknown>();
    for (const at of kept.keys()) {
      if (gone.some(([from, to]) => at >= from && at <= to)) kept.delete(at);
    }
    for (const [at, step] of steps) kept.set(at, step);
    lying.steps.set(head.id, kept);
    lying.heads.set(head.id, head);
    if (document !== null) lying.documents.set(head.id, document);
    for (const [key, value] of Object.entries(desk)) lying.desk.set(key, value);
  };
  const shelf: JobShelf = {
    readDesk: async (key) => {
      if (fault !== null) throw fault;
      return Promise.resolve(lying.desk.get(key));
    },
    writeDesk: async (values) => {
      await Promise.resolve();
      if (fault !== null) throw fault;
      for (const [key, value] of Object.entries(values)) {
        lying.desk.set(key, structuredClone(value));
      }
    },
    heads: () => Promise.resolve([...lying.heads.values()]),
    read: async (id) => {
      await Promise.resolve();
      const head = lying.heads.get(id);
      if (head === undefined) return null;
      const document: unknown = structuredClone(lying.documents.get(id));
      return { head, document, steps: structuredClone(lying.steps.get(id) ?? new Map()) };
    },
    write: async (write) => {
      await Promise.resolve();
      if (fault !== null) throw fault;
      apply(write);
      writes.push(write);
    },
    remove: async (ids) => {
      await Promise.resolve();
      for (const id of ids) {
        for (const map of [lying.heads, lying.documents, lying.steps, lying.looks]) map.delete(id);
      }
    },
    looks: () => Promise.resolve(lying.looks),
    writeLook: async (id, look) => {
      await Promise.resolve();
      lying.looks.set(id, look);
    },
    onLost: (heard) => {
      lost = heard;
    },
  };
  return {
    shelf,
    writes,
    lying: () => lying,
    /** From now on nothing can be written; null for it can again. */
    fail: (error: Error | null) => {
      fault = error;
    },
    /** All that lies there is taken away, as a browser does whose data are cleared. */
    wipe: () => {
      lying = empty();
      lost();
    },
  };
};

/** No pictures anywhere. */
export const noPictures: PictureBytes = {
  read: () => Promise.resolve({}),
  has: () => true,
  write: () => Promise.resolve(),
};

/** An error as the browser names it. */
export const named = (name: string): Error => Object.assign(new Error('no reason'), { name });
