import { phrase } from '../../phrases/phrase.ts';
import type { Bench } from '../bench.ts';
import { newSite } from './newSite.ts';
import { putOnPad } from './putOnPad.ts';

/** Puts an empty pad before the hand, in the length style of the drawing before it, counted as the company does. */
export const startNew = (bench: Bench): void => {
  const { lengths } = bench.site.getState().history.present.site;
  const site = { ...newSite(bench.session.getState().counting), lengths };
  putOnPad(bench, { site, label: phrase`New yard` });
};
