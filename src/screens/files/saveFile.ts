import { phrase } from '../../phrases/phrase.ts';
import { siteFile } from '../../site/siteFile.ts';
import type { Site } from '../../site/site.ts';
import type { Underlay } from '../../site/underlay.ts';
import type { Bench } from '../bench.ts';
import { asSaved } from '../merge/copies.ts';
import { ownCopy } from '../merge/openCopy.ts';
import { download } from './download.ts';

/** What a file does not have: pictures that are kept beside it; empty where it has all. */
const without = ({ underlays, pictures }: Site): string => {
  const beside = new Set(
    Object.values<Underlay>(underlays)
      .map(({ picture }) => picture)
      .filter((id) => !(id in pictures)),
  ).size;
  if (beside === 0) return '';
  return beside === 1
    ? phrase`; 1 picture is kept on this device and is not in it`
    : phrase`; ${beside} pictures are kept on this device and are not in it`;
};

/** Saves the document as a site file, named for the job. A running gesture is not saved. */
export const saveFile = async (bench: Bench): Promise<void> => {
  const own = ownCopy(bench);
  const { document } = own;
  const { name, text } = siteFile(await asSaved(bench.copies, own));
  download({ name, type: 'application/json', content: text });
  bench.session.setState({ say: `${phrase`Saved ${name}`}${without(document)}` });
};
