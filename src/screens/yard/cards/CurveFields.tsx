import type { Leg } from '../../../engine/layout.ts';
import { distance } from '../../../geometry/distance.ts';
import { middleOrdinate } from '../../../geometry/middleOrdinate.ts';
import { arcOf } from '../../../geometry/track.ts';
import { curveLeg } from '../../../site/edits/curveLeg.ts';
import { curveToRadius } from '../../../site/edits/curveToRadius.ts';
import type { LineId } from '../../../site/ids.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { LengthField } from '../../fields/LengthField.tsx';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

const sides = [
  { value: 'straight', label: phrase`Straight` },
  { value: 'left', label: phrase`Curved, bowed to the left` },
  { value: 'right', label: phrase`Curved, bowed to the right` },
] as const;

/** A leg that is bowed by its card goes off its chord by this share of it at first. */
const firstBow = 1 / 8;

const sideOf = (bow: number): (typeof sides)[number]['value'] => {
  if (bow === 0) return 'straight';
  return bow > 0 ? 'left' : 'right';
};

/** Whether a leg is straight or curved, seen from its start, and by its middle ordinate or radius. */
export const CurveFields = ({ line, leg }: { readonly line: LineId; readonly leg: Leg }) => {
  const { lengths } = useSite();
  const edit = useEdit();
  const make = useDo();
  const chord = distance(leg.start, leg.end);
  const arc = arcOf(leg);
  const side = leg.bow < 0 ? 'right' : 'left';
  const bend = (bow: number) =>
    edit(phrase`Curve leg`, (was) => curveLeg(was, { line, leg: leg.id, bow }));
  return (
    <>
      <ChoiceField
        label={phrase`Runs`}
        value={sideOf(leg.bow)}
        choices={sides}
        onChoose={(chosen) => {
          const size = Math.abs(leg.bow) || chord * firstBow;
          const bow = chosen === 'straight' ? 0 : chosen === 'left' ? size : -size;
          make(chosen === 'straight' ? phrase`Straighten leg` : phrase`Curve leg`, (was) =>
            curveLeg(was, { line, leg: leg.id, bow }),
          );
        }}
      />
      {arc !== null && (
        <>
          <div className="pair">
            <LengthField
              label={phrase`Middle ordinate`}
              value={inches(Math.abs(leg.bow))}
              style={lengths}
              onEnter={(off) => bend((leg.bow < 0 ? -1 : 1) * Math.abs(off))}
            />
            <LengthField
              label={phrase`Radius`}
              value={inches(arc.radius)}
              style={lengths}
              onEnter={(radius) => {
                const off = middleOrdinate(radius, chord);
                if (off !== null && radius > 0) {
                  return edit(phrase`Curve leg`, (was) =>
                    curveToRadius(was, { line, leg: leg.id, radius, side }),
                  );
                }
                const least = formatLength(inches(chord / 2), lengths);
                return phrase`Radius ${formatLength(radius, lengths)}: expected half the chord, ${least}, or more`;
              }}
            />
          </div>
          <p className="note">
            {phrase`Chord ${formatLength(inches(chord), lengths)}. The middle ordinate goes from the middle of the chord square to the curve.`}
          </p>
        </>
      )}
    </>
  );
};
