import { useState } from 'react';
import { distance } from '../../../geometry/distance.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { Site } from '../../../site/site.ts';
import { turnsAt } from '../../../site/turnsAt.ts';
import type { Selection } from '../../../store/selection.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import { useSession, useSite } from '../../bench.ts';
import { SquaringSheet } from './SquaringSheet.tsx';

/** How long the two legs are of the corner that is selected; null where none is. */
const legsAt = (site: Site, selection: Selection): readonly [Inches, Inches] | null => {
  const [turn] = selection?.kind === 'mark' ? turnsAt(site, selection.id) : [];
  if (turn === undefined) return null;
  const [at, from, to] = [site.marks[turn.at], site.marks[turn.from], site.marks[turn.to]];
  if (at === undefined || from === undefined || to === undefined) return null;
  const [one, other] = [distance(at, from), distance(at, to)];
  return one > 0 && other > 0 ? [inches(Math.max(one, other)), inches(Math.min(one, other))] : null;
};

/** Opens what squares a corner, with the legs of the corner that is selected. */
export const SquaringKey = () => {
  const site = useSite();
  const selection = useSession((state) => state.selection);
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {phrase`Square a corner`}
      </button>
      {open && <SquaringSheet legs={legsAt(site, selection)} onClose={() => setOpen(false)} />}
    </>
  );
};
