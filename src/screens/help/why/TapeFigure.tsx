import { phrase } from '../../../phrases/phrase.ts';
import type { LineId } from '../../../site/ids.ts';
import { useLayout, useSite } from '../../bench.ts';
import { tapeReasons } from './tapeReasons.ts';
import { Why } from './Why.tsx';

/** How the tape of a fence line is read, and why so; nothing where none is laid along it. */
export const TapeFigure = ({ line }: { readonly line: LineId }) => {
  const site = useSite();
  const layout = useLayout();
  const runs = layout.lines[line]?.runs ?? [];
  const [first] = runs;
  if (first === undefined) return null;
  return (
    <Why of={phrase`the tape readings`} reasons={() => tapeReasons(first, site, layout)}>
      <p className="note">
        {runs.length === 1
          ? phrase`One tape serves all of it.`
          : phrase`${runs.length} tapes serve it, one from corner to corner.`}
      </p>
    </Why>
  );
};
