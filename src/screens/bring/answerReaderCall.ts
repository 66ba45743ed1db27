import { readFound } from '../../importers/readFound.ts';
import type { Found } from '../../site/found.ts';
import { read } from '../../units/parsed.ts';
import { foundSummary } from './foundSummary.ts';
import type { ReaderAnswer, ReaderCall } from './fileReader.ts';

/** What was read last; it stays here, and only what is picked of it goes to the screen. */
let found: Found | null = null;

/** Reads a file, or picks from the one that was read last; null where none was. */
export const answerReaderCall = async (call: ReaderCall): Promise<ReaderAnswer | null> => {
  if (call.kind === 'read') {
    const result = await readFound(call.file);
    found = result.ok ? result.value : null;
    return { kind: 'read', summary: result.ok ? read(foundSummary(result.value)) : result };
  }
  if (found === null) return null;
  const keys = new Set(call.keys);
  const groups = found.groups.filter(({ key }) => keys.has(key));
  return { kind: 'picked', found: { ...found, groups, refused: [] } };
};
