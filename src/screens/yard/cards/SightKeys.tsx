import { useState } from 'react';
import { addSightTriangle } from '../../../site/edits/addSightTriangle.ts';
import type { MarkId } from '../../../site/ids.ts';
import { nextId } from '../../../site/nextId.ts';
import { sightCorner, type CornerOf } from '../../../site/sightCorner.ts';
import type { Site } from '../../../site/site.ts';
import { usualSightLegs } from '../../../trade/sightTriangles.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useBench, useSession, useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { sightCorners } from './sightCorners.ts';
import { useDo } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** What has to be said before a triangle is drawn: that a side ends earlier, or why there is none. */
const noticeOf = (site: Site, corner: CornerOf): { can: boolean; text: string } => {
  try {
    const { short } = sightCorner(site, corner);
    const sides = short.map((length) => formatLength(length, fineStyle(site.lengths)));
    if (sides.length === 0) return { can: true, text: '' };
    const [one = '', other] = sides;
    return {
      can: true,
      text:
        other === undefined
          ? phrase`One side is ${one} long: the triangle ends there.`
          : phrase`Its sides are ${one} and ${other} long: the triangle ends there.`,
    };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { can: false, text: error.message };
  }
};

/** At a corner of a boundary or of paving: a sight triangle along both its sides, in one step. */
export const SightKeys = ({ id }: { readonly id: MarkId }) => {
  const site = useSite();
  const { session } = useBench();
  const make = useDo();
  const { heights } = useSession((state) => state.plans);
  const [leg, setLeg] = useState(usualSightLegs.streets);
  const grounds = sightCorners(site, id);
  if (grounds.length === 0) return null;
  const draw = (corner: CornerOf) => {
    const drawn = nextId(site, 'feature');
    make(phrase`Draw sight triangle`, (was) =>
      addSightTriangle(was, corner, heights['sight triangle']),
    );
    session.setState({ selection: { kind: 'feature', id: drawn } });
  };
  return (
    <section aria-label={phrase`Sight triangle`}>
      <LengthField
        label={phrase`Legs of a sight triangle`}
        value={leg}
        style={site.lengths}
        note={`${usualSightLegs.source.text}.`}
        onEnter={(length) => {
          if (!(length > 0)) return phrase`Legs: expected more than 0`;
          setLeg(length);
          return null;
        }}
      />
      {grounds.map(({ feature, name }) => {
        const corner = { feature, mark: id, leg };
        const { can, text } = noticeOf(site, corner);
        return (
          <div key={feature} className="stack">
            {text !== '' && <p className="note">{text}</p>}
            <button type="button" disabled={!can} onClick={() => draw(corner)}>
              {grounds.length > 1
                ? phrase`Sight triangle here, along ${name}`
                : phrase`Sight triangle here`}
            </button>
          </div>
        );
      })}
    </section>
  );
};
