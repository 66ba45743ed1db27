import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { browserFlags, findChromium } from './findChromium.ts';
import { allKept, keptOf } from './keptPage.ts';
import { yardPage } from './yardPage.ts';

/** What came of drawing while the browser was killed. */
export interface CrashFigures {
  readonly rounds: number;
  /** Edits that were made in all, and those that the screen had said to be kept. */
  readonly edits: number;
  readonly acknowledged: number;
  /** Of these, edits that were not there afterwards. */
  readonly lost: number;
  /** Edits that were there though the browser went before the screen could say so. */
  readonly ahead: number;
}

/** Numbers from 0 to 1 that are the same for the same seed: a linear congruence (W. H. Press et al., ranqd1). */
const chances = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
};

/** A Chromium of its own, which can be killed with all that it has started. */
const startBrowser = async (profile: string): Promise<{ process: ChildProcess; at: string }> => {
  const flags = [...browserFlags, '--headless=new', '--remote-debugging-port=0'];
  const own = [`--user-data-dir=${profile}`, '--window-size=1300,900', 'about:blank'];
  const process = spawn(findChromium(), [...flags, ...own], { detached: true });
  const at = await new Promise<string>((resolve, reject) => {
    let said = '';
    process.stderr?.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      const found = /listening on (ws:\S+)/.exec(said)?.[1];
      if (found !== undefined) resolve(found);
    });
    process.on('exit', () => reject(new Error(`Chromium: expected an address, found ${said}`)));
  });
  return { process, at };
};

/** Ends what was started here, at once, as a power failure would. */
const kill = async ({ pid, exitCode, signalCode }: ChildProcess): Promise<void> => {
  if (pid === undefined || exitCode !== null || signalCode !== null) return;
  process.kill(-pid, 'SIGKILL');
  await new Promise((done) => setTimeout(done, 150));
};

/** Where marks are set, px of the pad from its corner. */
const [across, down] = [700, 400];
const mostMarks = 100;

/** What was done to the yard, and how many marks it has after each write. */
class Reckoning {
  writes = 0;
  at = 0;
  newest = 0;
  readonly marksAfter = new Map<number, number>();
  begin(writes: number, at: number, newest: number): void {
    [this.writes, this.at, this.newest] = [writes, at, newest];
    this.marksAfter.clear();
    this.marksAfter.set(writes, at);
  }
  did(at: number, newest: number): void {
    this.writes += 1;
    [this.at, this.newest] = [at, newest];
    this.marksAfter.set(this.writes, at);
  }
}

/** What is said to be kept once so many writes are, or half a second later. */
const soonKept = async (page: Page, writes: number) => {
  const until = Date.now() + 500;
  let kept = await keptOf(page);
  while (kept.writes < writes && Date.now() < until) kept = await keptOf(page);
  return kept;
};

const drawSome = async (
  page: Page,
  reckoning: Reckoning,
  random: () => number,
  acknowledge: (writes: number) => void,
): Promise<void> => {
  const yard = yardPage(page);
  for (;;) {
    const chance = random();
    const { at, newest } = reckoning;
    if (chance < 0.12 && at > 0) {
      reckoning.did(at - 1, newest);
      await page.getByRole('button', { name: /^Undo/ }).click();
    } else if (chance < 0.2 && newest > at) {
      reckoning.did(at + 1, newest);
      await page.getByRole('button', { name: /^Redo/ }).click();
    } else if (at < mostMarks) {
      reckoning.did(at + 1, at + 1);
      await yard.pressAt(40 + random() * across, 40 + random() * down);
    }
    const kept = await soonKept(page, reckoning.writes);
    acknowledge(kept.writes);
    // a press that only selected a mark is no edit
    if (kept.writes < reckoning.writes) reckoning.begin(kept.writes, kept.at, kept.at);
  }
};

interface Rounds {
  readonly address: string;
  readonly rounds: number;
  readonly seed: number;
  readonly say?: (line: string) => void;
}

/**
 * Draws in a browser that keeps its profile, kills it with SIGKILL at a moment that the seed says, starts
 * it again and compares what is on the pad with what was drawn: as many times as asked for.
 */
export const crashRounds = async ({
  address,
  rounds,
  seed,
  say,
}: Rounds): Promise<CrashFigures> => {
  const random = chances(seed);
  const profile = mkdtempSync(join(tmpdir(), 'lathline-crash-'));
  const reckoning = new Reckoning();
  let [edits, acknowledged, lost, ahead, before] = [0, 0, 0, 0, 0];
  try {
    for (let round = 0; round <= rounds; round += 1) {
      const { process: chromiumProcess, at } = await startBrowser(profile);
      try {
        const browser = await chromium.connectOverCDP(at);
        const context = browser.contexts()[0] ?? (await browser.newContext());
        const page = await context.newPage();
        await page.goto(`${address}/index.html`);
        await yardPage(page).pad.waitFor();
        const kept = await keptOf(page);
        const marks = Object.keys((await yardPage(page).saved()).marks).length;
        if (round > 0) {
          const missing = Math.max(0, before - kept.writes);
          const expected = reckoning.marksAfter.get(kept.writes);
          const whole = expected === marks && kept.at === marks;
          lost += missing + (whole ? 0 : 1);
          ahead += Math.max(0, kept.writes - before);
          if (missing > 0 || !whole) {
            const found = `${kept.writes} writes, version ${kept.at}, ${marks} marks`;
            say?.(`round ${round}: said ${before}, found ${found}, expected ${expected} marks`);
          }
        }
        if (round === rounds) break;
        let newest = kept.at;
        let writes = kept.writes;
        if (marks > mostMarks - 30) {
          await page.getByRole('button', { name: 'Job & file' }).click();
          await page.getByRole('button', { name: 'New yard' }).click();
          await allKept(page);
          const begun = await keptOf(page);
          [writes, newest] = [begun.writes, begun.at];
        }
        reckoning.begin(writes, newest, newest);
        before = writes;
        const started = writes;
        await yardPage(page).take('Mark');
        const drawing = drawSome(page, reckoning, random, (said) => {
          before = Math.max(before, said);
        }).catch(() => undefined);
        await new Promise((done) => setTimeout(done, 300 + random() * 2500));
        await kill(chromiumProcess);
        await drawing;
        edits += reckoning.writes - started;
        acknowledged += before - started;
      } finally {
        await kill(chromiumProcess);
      }
    }
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
  return { rounds, edits, acknowledged, lost, ahead };
};
