import type { LineId } from '../../../site/ids.ts';
import type { Infill } from '../../../site/infill.ts';
import type { Site } from '../../../site/site.ts';
import { infillOn } from '../../plan/infillOn.ts';
import { fenceSign, type KeyEntry } from './keySigns.ts';
import { phrase } from '../../../phrases/phrase.ts';

const fences = [
  ['chain link', phrase`chain-link fence`],
  ['boards', phrase`fence of boards on rails`],
  ['panels', phrase`fence of panels`],
] as const satisfies readonly (readonly [Infill['kind'], string])[];

/** Fence by what is between its posts; chain link where nothing is drawn yet. */
export const fenceKey = (site: Site): KeyEntry[] => {
  const ids = Object.keys(site.lines) as LineId[];
  const drawn = new Set(ids.map((id) => infillOn(site, id)));
  const shown = fences.filter(([of]) => drawn.has(of) || (drawn.size === 0 && of === 'chain link'));
  return shown.map(([of, text]) => ({ sign: fenceSign(of), text }));
};
