import { ShelfRefusal } from './jobShelf.ts';
import type { KeepTrouble } from './keptState.ts';
import { told } from './told.ts';
import { phrase } from '../phrases/phrase.ts';

const full = phrase`This device has no room left: what you draw now is not kept. Save a file of it.`;
const blocked = phrase`This browser keeps nothing for this program (a private window, or storage is turned off): what you draw is gone when the page closes. Save a file of it.`;

/** What failures of the browser's storage are called, by the specification of IndexedDB. */
const kinds: Readonly<Record<string, Pick<KeepTrouble, 'kind' | 'line'>>> = {
  QuotaExceededError: { kind: 'full', line: full },
  SecurityError: { kind: 'blocked', line: blocked },
  InvalidStateError: { kind: 'blocked', line: blocked },
  ReferenceError: { kind: 'blocked', line: blocked },
  VersionError: {
    kind: 'failed',
    line: phrase`A newer version of this program has been used here: what you draw is not kept. Save a file of it, then load this page again.`,
  },
};

/** Why a job could not be written, as one line that says what is not kept and what to do. */
export const keepTrouble = (error: unknown): KeepTrouble => {
  if (error instanceof ShelfRefusal) {
    return {
      kind: 'emptied',
      line: phrase`What this browser kept was taken away while the program was open: other jobs are gone. This one is being written again; save a file of it.`,
    };
  }
  const name = error instanceof Error ? error.name : '';
  const known = Object.hasOwn(kinds, name) ? kinds[name] : undefined;
  if (known !== undefined) return known;
  const line = phrase`This job is not being kept on the device (${told(error)}). Save a file of it.`;
  return { kind: 'failed', line };
};
