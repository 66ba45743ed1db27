import { readFound } from '../../importers/readFound.ts';
import type { Found } from '../../site/found.ts';
import { read } from '../../units/parsed.ts';
import { foundSummary } from './foundSummary.ts';
import type { ReaderAnswer, ReaderCall } from './fileReader.ts';

/** What was read last; it stays here, and only what is picked of it goes to the screen. */
let found: Found | null = null;

const answer = (said: ReaderAnswer): void => self.postMessage(said, {});

const readFile = async (call: Extract<ReaderCall, { kind: 'read' }>): Promise<void> => {
  const result = await readFound(call.file);
  found = result.ok ? result.value : null;
  answer({ kind: 'read', summary: result.ok ? read(foundSummary(result.value)) : result });
};

/** Reads one file away from the screen, so that the pad answers meanwhile. */
self.addEventListener('message', ({ data }: MessageEvent<ReaderCall>) => {
  if (data.kind === 'read') {
    readFile(data).catch((error: unknown) => answer({ kind: 'failed', why: String(error) }));
  } else if (found !== null) {
    const keys = new Set(data.keys);
    const groups = found.groups.filter(({ key }) => keys.has(key));
    answer({ kind: 'picked', found: { ...found, groups, refused: [] } });
  }
});
