import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import type { Site } from '../src/site/site.ts';
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

/** Where marks are set, px of the pad from its corner: on its paper, and clear of its keys. */
const [left, top, across, down] = [30, 60, 560, 370];
const mostMarks = 100;
/** A mark is drawn to others by less than this, px of the pad. */
const drawnTo = 20;

/** A mark as it was pressed, on the ground, and what it may have been drawn away by; inches. */
interface Pressed {
  readonly x: number;
  readonly y: number;
  readonly within: number;
}

/** What a yard has after a write: so many marks in all, and among them those that were pressed this round. */
interface Reckoned {
  readonly marks: number;
  readonly pressed: readonly Pressed[];
}

/** What was done to the yard, and what it has after each write. */
class Reckoning {
  writes = 0;
  at = 0;
  /** The versions of this round, by their numbers. */
  private line = new Map<number, readonly Pressed[]>();
  private readonly after = new Map<number, Reckoned>();
  begin(writes: number, at: number, pressed: readonly Pressed[] = []): void {
    [this.writes, this.at, this.line] = [writes, at, new Map([[at, pressed]])];
    this.after.set(writes, { marks: at, pressed });
  }
  get pressed(): readonly Pressed[] {
    return this.line.get(this.at) ?? [];
  }
  get canUndo(): boolean {
    return this.line.has(this.at - 1);
  }
  get canRedo(): boolean {
    return this.line.has(this.at + 1);
  }
  moved(to: number): void {
    [this.writes, this.at] = [this.writes + 1, to];
    this.after.set(this.writes, { marks: to, pressed: this.pressed });
  }
  set(mark: Pressed): void {
    const pressed = [...this.pressed, mark];
    for (const version of this.line.keys()) {
      if (version > this.at) this.line.delete(version);
    }
    this.line.set(this.at + 1, pressed);
    this.moved(this.at + 1);
  }
  /** What a yard is to have after so many writes. */
  reckoned(writes: number): Reckoned | undefined {
    return this.after.get(writes);
  }
}

/** What is said to be kept once so many writes are, or a second later. */
const soonKept = async (page: Page, writes: number) => {
  const until = Date.now() + 1000;
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
  const view = ((await yard.pad.getAttribute('data-view')) ?? '').split(' ').map(Number);
  const [scale = 1, x0 = 0, y0 = 0] = view;
  for (;;) {
    const [chance, before] = [random(), reckoning.pressed];
    if (chance < 0.12 && reckoning.canUndo) {
      reckoning.moved(reckoning.at - 1);
      await page.getByRole('button', { name: /^Undo/ }).click();
    } else if (chance < 0.25 && reckoning.canRedo) {
      reckoning.moved(reckoning.at + 1);
      await page.getByRole('button', { name: /^Redo/ }).click();
    } else {
      const [x, y] = [left + random() * across, top + random() * down];
      const within = drawnTo / scale;
      reckoning.set({ x: (x - x0) / scale, y: (y0 - y) / scale, within });
      await yard.pressAt(x, y);
    }
    const kept = await soonKept(page, reckoning.writes);
    acknowledge(kept.writes);
    // a press that only selected a mark is no edit
    if (kept.writes < reckoning.writes) reckoning.begin(kept.writes, kept.at, before);
  }
};

/** Whether a yard has what it is to have. */
const isWhole = (site: Site, at: number, reckoned: Reckoned | undefined): boolean => {
  const marks = Object.values<Site['marks'][keyof Site['marks']]>(site.marks);
  if (reckoned === undefined || reckoned.marks !== at || marks.length !== at) return false;
  return reckoned.pressed.every(({ x, y, within }) =>
    marks.some((mark) => Math.hypot(mark.x - x, mark.y - y) <= within),
  );
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
        const site = await yardPage(page).saved();
        const marks = Object.keys(site.marks).length;
        if (round > 0) {
          const missing = Math.max(0, before - kept.writes);
          const expected = reckoning.reckoned(kept.writes);
          const whole = isWhole(site, kept.at, expected);
          lost += missing + (whole ? 0 : 1);
          ahead += Math.max(0, kept.writes - before);
          if (missing > 0 || !whole) {
            const found = `${kept.writes} writes, version ${kept.at}, ${marks} marks`;
            const told = (await page.getByRole('status').allInnerTexts()).join(' ').trim();
            say?.(
              `round ${round}: said ${before}, found ${found}, expected ${expected?.marks} marks; the screen says: ${told}`,
            );
          }
        }
        if (round === rounds) break;
        let { writes, at: version } = kept;
        if (marks > mostMarks - 30) {
          await page.getByRole('button', { name: 'Job & file' }).click();
          await page.getByRole('button', { name: 'New yard' }).click();
          await allKept(page);
          const begun = await keptOf(page);
          [writes, version] = [begun.writes, begun.at];
        }
        reckoning.begin(writes, version);
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
