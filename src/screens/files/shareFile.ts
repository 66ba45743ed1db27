import { phrase } from '../../phrases/phrase.ts';
import { siteFile } from '../../site/siteFile.ts';
import { told } from '../../store/told.ts';
import type { Bench } from '../bench.ts';
import { asSaved } from '../merge/copies.ts';
import { ownCopy } from '../merge/openCopy.ts';

/** The same text under names that browsers let be shared: some take no JSON. */
const shapes = [
  { ending: '', type: 'application/json' },
  { ending: '.txt', type: 'text/plain' },
] as const;

const shareable = (name: string, text: string): File | null => {
  const files = shapes.map(({ ending, type }) => new File([text], `${name}${ending}`, { type }));
  const can = (file: File) => navigator.canShare?.({ files: [file] }) === true;
  return files.find(can) ?? null;
};

/** Whether this browser hands site files over to other programs of the device. */
export const canShareFiles = (): boolean => shareable('yard.site.json', '{}') !== null;

/** Hands the job on the pad over to another program of the device, as a file. */
export const shareFile = async (bench: Bench): Promise<void> => {
  try {
    const { name, text } = siteFile(await asSaved(bench.copies, ownCopy(bench)));
    const file = shareable(name, text);
    if (file !== null) await navigator.share({ files: [file] });
  } catch (error) {
    // whoever changes their mind knows it
    if (error instanceof DOMException && error.name === 'AbortError') return;
    bench.session.setState({ say: phrase`The file could not be handed over: ${told(error)}` });
  }
};
