import { faultOf } from './faultOf.ts';
import { inputOf, type Input } from './inputOf.ts';
import { readers } from './readers.ts';
import { soundFiles } from './seeds.ts';
import type { Task, Told } from './told.ts';

/** Waits until it is told, so that the process that watches knows the input before anything is read. */
const tell = (told: Told): Promise<void> =>
  new Promise((done) => void process.send?.(told, undefined, undefined, () => done()));

/** Milliseconds of a clock, and of work: others may use the machine, so the less of both counts. */
const clock = () => {
  const [wall, work] = [performance.now(), process.cpuUsage()];
  return (): number => {
    const { user, system } = process.cpuUsage(work);
    return Math.min(performance.now() - wall, (user + system) / 1000);
  };
};

const megabyte = 2 ** 20;

/** Megabytes by which the most that the process ever held was raised, over what it held before. */
const memory = () => {
  const [before, most] = [process.memoryUsage.rss(), process.resourceUsage().maxRSS * 1024];
  return (): number => {
    const now = process.resourceUsage().maxRSS * 1024;
    return now > most ? (now - before) / megabyte : 0;
  };
};

const readOne = async ({ kind, bytes }: Input) => {
  const [ms, megabytes] = [clock(), memory()];
  try {
    const taken = await readers[kind](bytes);
    const used = { ms: ms(), megabytes: megabytes() };
    return {
      opened: taken.opened,
      ...used,
      fault: faultOf(taken, new TextDecoder('latin1').decode(bytes)),
    };
  } catch (error) {
    const said = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return {
      opened: false,
      ms: ms(),
      megabytes: megabytes(),
      fault: `thrown: ${said.slice(0, 700)}`,
    };
  }
};

const work = async ({ seed, from, count }: Task): Promise<void> => {
  const seeds = await soundFiles();
  for (let input = from; input < from + count; input += 1) {
    const made = inputOf(seeds, seed, input);
    // oxlint-disable-next-line no-await-in-loop
    await tell({ is: 'begun', input, kind: made.kind, size: made.bytes.length });
    const told = await readOne(made);
    await tell({ is: 'read', input, ...told });
  }
  process.disconnect();
};

process.once('message', (task: Task) => void work(task));
