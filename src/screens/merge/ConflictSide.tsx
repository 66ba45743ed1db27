import { useId, useMemo, useRef } from 'react';
import { Picture } from '../../canvas/Picture.tsx';
import { useSize } from '../../canvas/useSize.ts';
import { palettes } from '../../drawing/palettes.ts';
import type { Bounds } from '../../geometry/bounds.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { Conflict } from '../../site/merge/conflict.ts';
import type { Side } from '../../site/merge/merged.ts';
import { useSession } from '../bench.ts';
import { inch, smallPlan, type LaidCopy } from './smallPlan.ts';

interface Props {
  readonly conflict: Conflict;
  readonly side: Side;
  /** Whose it is: `Here`, or the file that it came in. */
  readonly whose: string;
  readonly copy: LaidCopy;
  /** Null for what is not on the drawing. */
  readonly ground: Bounds | null;
  readonly chosen: boolean;
  readonly onChoose: () => void;
}

const keys: Readonly<Record<Side, string>> = {
  mine: phrase`Keep what is here`,
  theirs: phrase`Take what came`,
};

const Plan = ({ conflict, whose, copy, ground }: Props & { readonly ground: Bounds }) => {
  const theme = useSession((state) => state.theme);
  const room = useRef<HTMLDivElement>(null);
  const frame = useSize(room);
  const atoms = useMemo(
    () => (frame.width > 0 ? smallPlan(copy, conflict.key, { ground, frame }) : []),
    [copy, conflict, ground, frame],
  );
  return (
    <div ref={room} className="merge-plan" style={{ background: palettes[theme].paper }}>
      {frame.width > 0 && (
        <Picture
          atoms={atoms}
          palette={palettes[theme]}
          width={frame.width / inch}
          height={frame.height / inch}
          scale={inch}
          label={phrase`${whose}: plan about ${conflict.what.split(':')[0] ?? ''}`}
        />
      )}
    </div>
  );
};

/** What one copy has of what is in conflict, on the drawing and in words, and the key that takes it. */
export const ConflictSide = (props: Props) => {
  const { conflict, side, whose, ground, chosen, onChoose } = props;
  const says = useId();
  return (
    <figure className="merge-side" data-chosen={chosen}>
      <figcaption>{whose}</figcaption>
      {ground !== null && <Plan {...props} ground={ground} />}
      <p id={says}>{conflict[side].words}</p>
      <button type="button" aria-pressed={chosen} aria-describedby={says} onClick={onChoose}>
        {keys[side]}
      </button>
    </figure>
  );
};
