import { phrase } from '../phrases/phrase.ts';
import type { Site } from '../site/site.ts';
import type { KeptDocument } from './change.ts';
import { freshJobId, type JobId } from './jobId.ts';
import { ShelfRefusal, type JobHead, type JobShelf } from './jobShelf.ts';
import { jobJoiner } from './jobJoiner.ts';
import { jobWriter, type JobWriter } from './jobWriter.ts';
import { keepTrouble } from './keepTrouble.ts';
import { deskKeeper, type DeskKeeper } from './keptDesk.ts';
import { createKeptTeller, type KeepTrouble, type KeptTeller } from './keptState.ts';
import type { Ledger } from './ledger.ts';
import type { PictureBytes } from './picturesApart.ts';
import type { SessionStore } from './session.ts';
import type { SiteStore } from './siteStore.ts';
import type { Trail } from './trail.ts';
import { windowJoins } from './windowJoins.ts';

/** Which job was written, and how often it has been. */
export type Written = Pick<JobHead, 'id' | 'writes'>;

/** What is to be kept, and where. */
export interface Keeping {
  readonly shelf: JobShelf;
  readonly bytes: PictureBytes;
  readonly site: SiteStore;
  readonly session: SessionStore;
  /** The jobs that were read from the shelf and are on the pad. */
  readonly known: readonly Ledger[];
  readonly now: () => number;
  /** Tells other windows what was written, and hears it of them. */
  readonly tell: (written: Written) => void;
  readonly hear: (heard: (written: Written) => void) => void;
  /** Bytes that the steps of one job may take on the device. */
  readonly most: number;
}

const noRoom: KeepTrouble = {
  kind: 'pictures',
  line: phrase`This device has no room for the pictures under the drawing; all else is kept. Save a file of it.`,
};

/** Sends what happens on the pad to the shelf, in order. */
export interface Sender {
  readonly teller: KeptTeller;
  readonly writer: JobWriter;
  /** What the history of each job on this window's pad is now. */
  readonly trails: Map<JobId, Trail>;
  readonly onPad: () => JobId;
  /** Sends a job as its trail is now; the bytes of pictures in the file of `drawn` go before it. */
  readonly send: (job: JobId, drawn: Site | null) => void;
  /** Brings the job on the pad up to what another window may have written. */
  readonly catchUp: () => void;
  /** Whether the pad is being given what another window wrote. */
  readonly isGiving: () => boolean;
  /** Does something after what is on its way. */
  readonly after: (deed: () => Promise<void>) => void;
  readonly keepDesk: () => Promise<void>;
  /** Looks whether the job on the pad is still there after the place was closed, and writes it where it is not. */
  readonly lost: () => Promise<void>;
  /** When everything has arrived or failed. */
  readonly settled: () => Promise<void>;
}

type LostParts = Pick<Keeping, 'shelf'> &
  Pick<Sender, 'writer' | 'teller' | 'onPad' | 'send'> & { readonly desk: DeskKeeper };

/** Writes the job on the pad again where it is no longer on the shelf. */
const lookForLost = async (parts: LostParts): Promise<void> => {
  const { shelf, writer, teller, desk, onPad, send } = parts;
  const ledger = writer.ledgerOf(onPad());
  if (ledger === undefined || ledger.there === null) return;
  try {
    const heads = await shelf.heads();
    if (heads.some(({ id }) => id === ledger.head.id)) return;
    teller.say(keepTrouble(new ShelfRefusal(null)));
    writer.know({ ...ledger, sent: null, there: null, sound: false });
    desk.gone();
    send(onPad(), null);
  } catch (error) {
    teller.say(keepTrouble(error));
  }
};

/** The documents that are known to lie on the shelf. */
const lyingOf = (known: readonly Ledger[]): Map<JobId, KeptDocument> =>
  new Map(
    known.flatMap(({ head, trail, there }) =>
      there === null ? [] : [[head.id, trail.present] as const],
    ),
  );

/** The way from the pad to the shelf, with what becomes of what fails on it. */
export const createSender = (keeping: Keeping): Sender => {
  const { shelf, bytes, site, session, known, now, tell, hear } = keeping;
  const trails = new Map(known.map(({ head, trail }) => [head.id, trail]));
  const lying = lyingOf(known);
  const onPad = (): JobId => site.getState().pad.job;
  const first = known.find(({ head }) => head.id === onPad());
  const there = first?.sound ? { writes: first.head.writes, at: first.trail.at } : null;
  const teller = createKeptTeller({ job: onPad(), there });
  const desk = deskKeeper(session, onPad, first?.head.id ?? null);
  let queue: Promise<void> = Promise.resolve();
  const after = (deed: () => Promise<void> | void): void => {
    queue = queue.then(deed);
  };
  const send = (job: JobId, drawn: Site | null): void => {
    const trail = trails.get(job);
    if (trail === undefined) return;
    if (job === onPad()) teller.sent(job);
    if (drawn !== null && !bytes.has(drawn)) {
      after(() => bytes.write(drawn).catch(() => teller.say(noRoom)));
    }
    const times = joiner.times(job);
    after(() => {
      // what was joined meanwhile has it
      if (joiner.times(job) === times) writer.write(job, trail, desk.taken());
    });
  };
  const writer = jobWriter({
    shelf,
    now,
    fresh: freshJobId,
    arrived: ({ id, writes, at }, trail) => {
      lying.set(id, trail.present);
      tell({ id, writes });
      if (id !== onPad()) return;
      teller.arrived({ job: id, there: { writes, at }, all: trail === trails.get(id) });
    },
    failed: (job, error, lost) => {
      const trouble = keepTrouble(error);
      teller.say(trouble);
      if (trouble.kind !== 'emptied') return desk.back(lost);
      // the desk has gone with the rest
      desk.gone();
      return send(job, null);
    },
    overtaken: (job) => after(() => joinWith(job)),
  });
  const joiner = jobJoiner({ shelf, bytes, site, writer, trails, lying });
  const lost = () => lookForLost({ shelf, writer, teller, desk, onPad, send });
  const joinWith = windowJoins({ site, session, writer, trails, joiner, teller, desk, send, lost });
  const catchUp = (): void => after(() => joinWith(onPad()));
  hear(({ id, writes }) => {
    if (id === onPad() && (writer.ledgerOf(id)?.sent?.writes ?? 0) <= writes) catchUp();
  });
  for (const ledger of known) writer.know(ledger);
  const keepDesk = async (): Promise<void> => {
    const rest = desk.taken();
    if (Object.keys(rest).length === 0) return;
    await shelf.writeDesk(rest).catch((error: unknown) => {
      desk.back(rest);
      teller.say(keepTrouble(error));
    });
  };
  const settled = async (): Promise<void> => {
    await queue;
    await writer.settled();
    // what failed may have sent more
    await queue;
    await writer.settled();
  };
  return {
    teller,
    writer,
    trails,
    onPad,
    send,
    catchUp,
    isGiving: joiner.isGiving,
    after,
    keepDesk,
    lost,
    settled,
  };
};
