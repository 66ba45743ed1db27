import type { AsSet } from '../../../site/asSet.ts';
import type { Inches } from '../../../units/inches.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useSite } from '../../bench.ts';
import { spot, withElements } from '../../withElements.tsx';
import { openingAt } from './openingAt.ts';
import { sizeText } from '../../fields/sizeText.ts';
import { today } from '../../today.ts';
import { blankAsSet } from './blankAsSet.ts';
import { FoundField } from './FoundField.tsx';
import type { Recorder } from './useAsSet.ts';
import { withWidth } from './withWidth.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly asSet: AsSet | null;
  /** The opening to hold. */
  readonly target: Inches;
  readonly onRecord: Recorder;
}

/** The opening that was set, at the top and at the bottom. */
export const WidthFields = ({ asSet, target, onRecord }: Props) => {
  const site = useSite();
  const entered = (at: 'top' | 'bottom', width: Inches | null): string | null => {
    // nothing was there and nothing came
    if (width === null && (asSet === null || asSet[at] === null)) return null;
    const next = withWidth(asSet, [at, width], {
      blank: (top) => blankAsSet(site, top, today()),
      write: (length) => sizeText(length, site.lengths),
    });
    return typeof next === 'string' ? next : onRecord(phrase`Record opening as set`, next);
  };
  return (
    <>
      <div className="pair">
        {(['top', 'bottom'] as const).map((at) => (
          <FoundField
            key={at}
            label={openingAt[at]}
            value={asSet?.[at] ?? null}
            onEnter={(width) => entered(at, width)}
          />
        ))}
      </div>
      <p className="note">
        {withElements(
          phrase`Inside face to inside face of the posts, to hold ${spot(0)}. Measure both: posts lean.`,
          [<b key="target">{formatLength(target, fineStyle(site.lengths))}</b>],
        )}
      </p>
    </>
  );
};
