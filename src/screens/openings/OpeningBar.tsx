import { useMemo, useRef } from 'react';
import { Picture } from '../../canvas/Picture.tsx';
import { useSize } from '../../canvas/useSize.ts';
import { openingBar } from '../../drawing/opening/openingBar.ts';
import type { Marks } from '../../drawing/opening/openingRuler.ts';
import { palettes } from '../../drawing/palettes.ts';
import type { Opening } from '../../engine/opening.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { useSession, useSite } from '../bench.ts';

/** CSS pixels for a paper inch of the bar. */
const inch = 96;
const widest = 11;
const narrowest = 3.2;

interface Props extends Marks {
  readonly opening: Opening;
  readonly label: string;
}

/** An opening drawn to a stretched scale over its ruler, as wide as there is room. */
export const OpeningBar = ({ opening, label, nominal, set }: Props) => {
  const { lengths } = useSite();
  const theme = useSession((state) => state.theme);
  const room = useRef<HTMLDivElement>(null);
  const { width } = useSize(room);
  const bar = useMemo(
    () =>
      openingBar(opening, {
        width: Math.min(widest, Math.max(narrowest, width / inch)),
        style: fineStyle(lengths),
        ...(nominal !== undefined && { nominal }),
        ...(set !== undefined && { set }),
      }),
    [opening, width, lengths, nominal, set],
  );
  return (
    <div ref={room} className="bar">
      <Picture
        atoms={bar.atoms}
        palette={palettes[theme]}
        width={bar.width}
        height={bar.height}
        scale={inch}
        label={label}
      />
    </div>
  );
};
