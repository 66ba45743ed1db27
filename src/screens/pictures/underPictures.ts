import { useMemo } from 'react';
import type { UnderPicture } from '../../canvas/underPicture.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { UnderlayId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { Underlay } from '../../site/underlay.ts';
import { underlayGround } from '../../site/underlayGround.ts';
import { underlaysInOrder } from '../../site/underlaysInOrder.ts';
import { useBench, useSitePart } from '../bench.ts';
import { useStored } from '../useStored.ts';
import { groundMap, type PictureEntry, type Shown } from './pictureBox.ts';

/** What is written in the frame of a picture whose pixels are not at hand. */
const frameWords = ({ label, file }: Pick<Underlay, 'label' | 'file'>, shown: Shown): string[] => {
  const name = label === '' ? file : label;
  if (shown.is === 'missing')
    return [name, phrase`not on this device:`, phrase`bring ${file} again`];
  if (shown.is === 'unreadable') return [name, shown.why];
  return [name, phrase`being read`];
};

const reading: Shown = { is: 'reading' };

/** The pictures of a site as they are painted, the undermost first. */
export const underPictures = (
  site: Pick<Site, 'underlays'>,
  shown: ReadonlyMap<UnderlayId, PictureEntry>,
): UnderPicture[] =>
  underlaysInOrder(site).map(([id, underlay]) => {
    const entry = shown.get(id);
    const toGround = entry === undefined ? null : groundMap(entry, underlay);
    const { shows } = underlay;
    const outline = underlayGround(underlay);
    if (entry?.shown.is === 'here' && toGround !== null) {
      const { bitmap, plan } = entry.shown;
      return { kind: 'pixels', bitmap, toGround, within: plan === null ? null : outline, shows };
    }
    return { kind: 'frame', outline, words: frameWords(underlay, entry?.shown ?? reading) };
  });

/** The pictures under the drawing as it is shown. */
export const useUnderPictures = (): readonly UnderPicture[] => {
  const { pictures } = useBench();
  const underlays = useSitePart((site) => site.underlays);
  const shown = useStored(pictures.shown, (state) => state);
  return useMemo(() => underPictures({ underlays }, shown), [underlays, shown]);
};
