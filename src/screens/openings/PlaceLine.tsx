import { placeText } from '../../engine/survey/placeText.ts';
import type { GateId } from '../../site/ids.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { useLayout, useSite } from '../bench.ts';

/** How well the place of a gate is known by the tapes, in one quiet line; nothing where that cannot be said. */
export const PlaceLine = ({ gate }: { readonly gate: GateId }) => {
  const { lengths } = useSite();
  const error = useLayout().survey.places[gate];
  if (error === undefined) return null;
  return <p className="note">{placeText(error, fineStyle(lengths))}</p>;
};
