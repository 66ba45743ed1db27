import { phrase } from '../../phrases/phrase.ts';
import { limits } from '../../site/limits.ts';
import { openSite } from '../../site/openSite.ts';
import type { Bench } from '../bench.ts';
import { openCopy } from '../merge/openCopy.ts';

/** Bytes that no site file reaches: a character of its text takes four at most. */
const mostBytes = 4 * limits.text;

/**
 * Opens a file that was chosen or dropped. What cannot be opened gets one line, and the drawing
 * stays as it is.
 */
export const openFile = async (bench: Bench, file: File): Promise<void> => {
  const refuse = (why: string) => bench.session.setState({ say: `${file.name}: ${why}` });
  if (file.size > mostBytes)
    return refuse(phrase`too large for a site file; the drawing is as it was`);
  try {
    const site = openSite(await file.text());
    if (!site.ok) return refuse(site.reason);
    await openCopy(bench, site.value, file.name);
  } catch {
    refuse(phrase`cannot be read from this device; the drawing is as it was`);
  }
};
