import { radius95 } from '../../../engine/walk/radius95.ts';
import { roughText } from '../../../engine/walk/roughText.ts';
import type { MarkId } from '../../../site/ids.ts';
import type { Observation } from '../../../site/observation.ts';
import { inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';

/** How rough a mark is that satellites found, by the best of what they found; nothing for any other mark. */
export const RoughFix = ({ id }: { readonly id: MarkId }) => {
  const { observations, lengths } = useSite();
  const found = Object.values<Observation>(observations).flatMap((seen) =>
    seen.kind === 'fix' && seen.mark === id ? [seen.accuracy] : [],
  );
  if (found.length === 0) return null;
  const within = roughText(radius95(inches(Math.min(...found))), lengths);
  return (
    <p className="note">
      Rough, by GPS, ±{within} 19 times in 20. It holds nothing in its place: tape it.
    </p>
  );
};
