import { emptySite } from '../../site/emptySite.ts';
import type { Bench } from '../bench.ts';
import { putOnPad } from './putOnPad.ts';

/** Puts an empty pad before the hand, in the length style of the drawing before it. */
export const startNew = (bench: Bench): void => {
  const { lengths } = bench.site.getState().history.present.site;
  const site = { ...emptySite({ specs: {}, hardware: {} }), lengths };
  putOnPad(bench, { site, label: 'New yard' });
};
