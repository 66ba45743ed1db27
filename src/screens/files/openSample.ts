import { phrase } from '../../phrases/phrase.ts';
import { openDocument } from '../../site/openDocument.ts';
import type { Bench } from '../bench.ts';
import { putOnPad } from './putOnPad.ts';
import type { Sample } from './samples.ts';

/** Puts one of the program's own yards on the pad; one line where it cannot be had. */
export const openSample = async (bench: Bench, { label, load }: Sample): Promise<void> => {
  try {
    const site = openDocument(await load());
    if (!site.ok) bench.session.setState({ say: `${label}: ${site.reason}` });
    else putOnPad(bench, { site: site.value, label: phrase`Open ${label}` });
  } catch {
    bench.session.setState({
      say: phrase`${label}: not on this device yet, and there is no connection`,
    });
  }
};
