import { fork, type ChildProcess } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Kind } from './seeds.ts';
import type { Task, Told } from './told.ts';

/** What one input of at most 1 MB may take: seconds of work, and megabytes over what was there before. */
export const most = { seconds: 2, megabytes: 500 } as const;

/** Seconds of work after which what has not come back is a hang, and of the clock where work is not told. */
const patience = { work: 2.5 * most.seconds, clock: 90 } as const;

/** Seconds that a process worked so far, as Linux tells them (proc(5), fields 14 and 15, of 1/100 s); null elsewhere. */
const workOf = (pid: number | undefined): number | null => {
  try {
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ').at(-1)?.split(' ') ?? [];
    return (Number(fields[11]) + Number(fields[12])) / 100;
  } catch {
    return null;
  }
};

/** Megabytes of the heap of JavaScript, at which the process ends itself: those of one input and of what is there. */
const heap = most.megabytes + 150;

/** What went wrong with an input. */
export interface Fault {
  readonly input: number;
  readonly kind: Kind;
  readonly is: 'crash' | 'hang' | 'half-opened' | 'line' | 'memory';
  readonly why: string;
}

/** What came of all inputs of a kind. */
export interface Figures {
  inputs: number;
  opened: number;
  refused: number;
  /** Milliseconds and megabytes of the worst, and its number. */
  slowest: readonly [ms: number, input: number];
  largest: readonly [megabytes: number, input: number];
}

export interface Run {
  readonly byKind: ReadonlyMap<Kind, Figures>;
  readonly faults: readonly Fault[];
}

type Begun = Extract<Told, { is: 'begun' }>;
type Read = Extract<Told, { is: 'read' }>;

const none = (): Figures => ({
  inputs: 0,
  opened: 0,
  refused: 0,
  slowest: [0, 0],
  largest: [0, 0],
});

const faultIs = (why: string): Fault['is'] => {
  if (why.startsWith('thrown')) return 'crash';
  return why.startsWith('half-opened') ? 'half-opened' : 'line';
};

/** Who listens to a run: to every input that is read, and to every fault as it is found. */
export interface Listener {
  readonly read?: (input: number) => void;
  readonly fault?: (fault: Fault) => void;
}

/** What all processes of a run told so far. */
class Account {
  readonly byKind = new Map<Kind, Figures>();
  readonly faults: Fault[] = [];
  readonly #listener: Listener;

  constructor(listener: Listener) {
    this.#listener = listener;
  }

  of(kind: Kind): Figures {
    const known = this.byKind.get(kind) ?? none();
    this.byKind.set(kind, known);
    return known;
  }

  fault({ input, kind }: Begun, is: Fault['is'], why: string): void {
    const found = { input, kind, is, why };
    this.faults.push(found);
    this.#listener.fault?.(found);
  }

  take(begun: Begun, { opened, ms, megabytes, fault, input }: Read): void {
    this.#listener.read?.(input);
    const figures = this.of(begun.kind);
    if (opened) figures.opened += 1;
    else figures.refused += 1;
    if (ms > figures.slowest[0]) figures.slowest = [ms, input];
    if (megabytes > figures.largest[0]) figures.largest = [megabytes, input];
    if (fault !== null) this.fault(begun, faultIs(fault), fault);
    if (ms > most.seconds * 1000) this.fault(begun, 'hang', `took ${Math.round(ms)} ms`);
    if (megabytes > most.megabytes) this.fault(begun, 'memory', `took ${Math.round(megabytes)} MB`);
  }
}

const started = (): ChildProcess =>
  fork(join(import.meta.dirname, 'child.ts'), [], {
    execArgv: ['--import', 'tsx', `--max-old-space-size=${heap}`],
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  });

/**
 * Has one process read inputs until they are all read, or one ends or holds up the process; the number of the
 * next input that is to be read.
 */
const readSome = (task: Task, account: Account): Promise<number> =>
  new Promise((done) => {
    const child = started();
    let [begun, next, said]: [Begun | null, number, string] = [null, task.from, ''];
    let since: readonly [clock: number, work: number | null] = [performance.now(), null];
    const late = () => {
      const [clock, work] = since;
      const now = workOf(child.pid);
      const worked = work === null || now === null ? 0 : now - work;
      const waited = (performance.now() - clock) / 1000;
      if (
        begun === null
          ? waited < 2 * patience.clock
          : worked < patience.work && waited < patience.clock
      )
        return;
      if (begun !== null)
        account.fault(
          begun,
          'hang',
          `did not come back: ${worked} s of work, ${Math.round(waited)} s`,
        );
      begun = null;
      child.kill('SIGKILL');
    };
    const timer = setInterval(late, 500);
    child.stderr?.on('data', (text: Buffer) => (said = `${said}${text.toString()}`.slice(-4000)));
    child.on('message', (told: Told) => {
      since = [performance.now(), told.is === 'begun' ? workOf(child.pid) : null];
      if (told.is === 'begun') {
        begun = told;
        next = told.input + 1;
        account.of(told.kind).inputs += 1;
        return;
      }
      if (begun !== null) account.take(begun, told);
      begun = null;
    });
    child.on('close', (code, signal) => {
      clearInterval(timer);
      const full = /heap out of memory|Reached heap limit/.test(said);
      if (begun !== null && full) account.fault(begun, 'memory', `over ${heap} MB of heap`);
      else if (begun !== null)
        account.fault(begun, 'crash', `ended by ${signal ?? code}: ${said.slice(-700)}`);
      if (next === task.from) throw new Error(`nothing was read: ${said}`);
      done(next);
    });
    child.send(task);
  });

/**
 * Reads spoilt files in a process of its own, which is watched: one that hangs, ends it or fills its memory is
 * told by its number, and the run goes on behind it.
 */
export const run = async (task: Task, listener: Listener = {}): Promise<Run> => {
  const account = new Account(listener);
  const end = task.from + task.count;
  for (let from = task.from; from < end;) {
    from = await readSome({ ...task, from, count: end - from }, account);
  }
  return account;
};
