import type { GateLayout } from '../../../engine/layout.ts';
import type { Inches } from '../../../units/inches.ts';
import { useBook, useSite } from '../../bench.ts';
import { sizeText } from '../../fields/sizeText.ts';
import { closedBy } from '../../plans/closedBy.ts';
import { proposedSlide } from '../../plans/proposedSlide.ts';
import { useDo } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** Sizes for a leaf that rolls, to be taken where nobody has measured any, with who says so. */
export const SlideProposal = ({ laid }: { readonly laid: GateLayout }) => {
  const site = useSite();
  const book = useBook();
  const make = useDo();
  const gate = site.gates[laid.id];
  const proposal = gate === undefined ? null : proposedSlide(site, gate);
  if (proposal === null) return null;
  const { way, leaf, opening, source } = proposal;
  const write = (length: Inches) => sizeText(length, site.lengths);
  return (
    <div className="stack">
      <p className="note">
        {phrase`Not measured yet? For a leaf of ${write(leaf)}: overlap ${write(way.overlap)}, counterbalance ${write(way.counterbalance)}, roller posts ${write(way.rollers)} apart and ${write(way.behind)} behind the line; the opening to hold is then ${write(opening)} (${source.text}).`}
      </p>
      <button
        type="button"
        onClick={() => make(phrase`Take proposed slide`, (was) => closedBy(was, laid, way, book))}
      >
        {phrase`Take these sizes`}
      </button>
    </div>
  );
};
