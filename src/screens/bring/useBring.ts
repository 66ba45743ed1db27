import { useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { bringIn, type BringChoices } from '../../site/edits/bringIn.ts';
import { attempt } from '../attempt.ts';
import { useBench } from '../bench.ts';
import { fitAll } from '../fitAll.ts';
import { broughtText } from './broughtText.ts';
import type { FileFound } from './useFound.ts';

type Chosen = Pick<BringChoices, 'becomes' | 'chord'>;

const keysOf = ({ becomes }: Chosen): string[] =>
  Object.entries(becomes).flatMap(([key, choice]) => (choice === 'leave out' ? [] : [key]));

/** Brings what was chosen onto the pad as one step; the line of what was refused stays until `clear`. */
export const useBring = (name: string, { pick }: FileFound) => {
  const bench = useBench();
  const [fault, setFault] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const present = () => bench.site.getState().history.present.site;
  const bringOn = async (chosen: Chosen): Promise<string | null> => {
    const found = await pick(keysOf(chosen));
    if (found === null) return phrase`cannot be read any more`;
    const before = present();
    const { fence, utility, heights } = bench.session.getState().plans;
    const { width, tolerance } = utility;
    const how = { ...chosen, fence, utility: { width, tolerance }, heights };
    const label = phrase`Bring in ${name}`;
    const refusal = attempt(bench, { label, on: (site) => bringIn(site, found, how) });
    if (refusal !== null) return refusal;
    const say = phrase`${name}: ${broughtText(before, present())} brought in`;
    bench.session.setState({ say, selection: null });
    fitAll(bench);
    return null;
  };
  const bring = async (chosen: Chosen): Promise<boolean> => {
    setBusy(true);
    const refusal = await bringOn(chosen);
    setBusy(false);
    setFault(refusal);
    return refusal === null;
  };
  return { bring, busy, fault, clear: () => setFault(null) };
};
