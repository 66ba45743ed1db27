import { phrase } from '../../phrases/phrase.ts';
import { withSave } from '../../site/lineage.ts';
import { settled, type Choices } from '../../site/merge/merged.ts';
import type { Bench } from '../bench.ts';
import { digestOf } from './digestOf.ts';
import type { Offer } from './offer.ts';
import { ownCopy } from './openCopy.ts';
import { rememberCopy } from './copies.ts';

/**
 * Puts what came of a merge in place of the drawing on the pad, as one step to undo. Both copies are remembered
 * as what it came from. One line where the drawing has changed meanwhile, and nothing is done.
 */
export const applyMerge = (bench: Bench, offer: Offer, choices: Choices): void => {
  const { site, session } = bench;
  const { mine, theirs, merge, file } = offer;
  if (ownCopy(bench).document !== mine) {
    session.setState({
      say: phrase`${file}: the drawing has changed meanwhile; open the file again`,
    });
    return;
  }
  const document = settled(merge, choices);
  const job = theirs.lineage.job ?? '';
  const lineage = [mine, theirs].reduce(
    (so, copy) => withSave(so, digestOf(copy), job),
    document.lineage,
  );
  void rememberCopy(bench.copies, mine);
  session.setState({ selection: null, tool: 'select', say: phrase`Merged ${file}` });
  site.getState().exchange({ ...document, lineage }, phrase`Merge ${file}`);
};
