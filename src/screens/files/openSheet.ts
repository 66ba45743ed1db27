import { phrase } from '../../phrases/phrase.ts';
import type { Bench } from '../bench.ts';
import { openCopy } from '../merge/openCopy.ts';

/** Bytes of the largest PDF that is looked into. Ours: more than any site file packs down to. */
const mostBytes = 100_000_000;

/**
 * Opens the drawing that a PDF carries, as the crew sheets of the program do. One that cannot be opened gets one
 * line, and the drawing stays as it is.
 * @returns false for a PDF that carries none, of which nothing was done.
 */
export const openSheet = async (bench: Bench, file: File): Promise<boolean> => {
  const refuse = (why: string) =>
    bench.session.setState({ say: phrase`${file.name}: ${why}; the drawing is as it was` });
  if (file.size > mostBytes) return false;
  try {
    const { siteInPdf } = await import('../../importers/pdf/siteInPdf.ts');
    const found = await siteInPdf(new Uint8Array(await file.arrayBuffer()));
    if (found.is !== 'site') return false;
    if (!found.site.ok) refuse(found.site.reason);
    else await openCopy(bench, found.site.value, file.name);
  } catch {
    refuse(phrase`cannot be read from this device, or what reads it is not on it yet`);
  }
  return true;
};
