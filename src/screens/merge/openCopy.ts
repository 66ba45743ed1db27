import { phrase } from '../../phrases/phrase.ts';
import type { Site } from '../../site/site.ts';
import type { Bench } from '../bench.ts';
import { putOnPad } from '../files/putOnPad.ts';
import { rememberCopy, type OwnCopy } from './copies.ts';
import { offerOf } from './offer.ts';

/** The job on the pad, its document as it is kept. */
export const ownCopy = ({ site }: Bench): OwnCopy => {
  const { pad, history, drawn } = site.getState();
  return { job: pad.job, document: drawn(history.present.site) };
};

/** Puts a document that came in a file on the pad, as a job of its own; undo brings the old one back. */
export const openBeside = (bench: Bench, site: Site, file: string): void =>
  putOnPad(bench, { site, label: phrase`Open ${file}` });

/**
 * Takes in a document that came in a file: a copy of the job on the pad waits for a person to say what
 * becomes of it, any other comes onto the pad. The device remembers it.
 */
export const openCopy = async (bench: Bench, site: Site, file: string): Promise<void> => {
  const offer = await offerOf(bench.copies, ownCopy(bench), { file, site });
  await rememberCopy(bench.copies, site);
  if (offer === null) openBeside(bench, site, file);
  else bench.copy.setState(offer, true);
};
