import { rulingFor } from '../../canvas/paintGrid.ts';
import { zoomAt } from '../../editor/view.ts';
import { phrase } from '../../phrases/phrase.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { useBench, useSession, useSitePart } from '../bench.ts';
import { fitAll } from '../fitAll.ts';
import { UndoKeys } from '../frame/UndoKeys.tsx';
import { useNarrow } from '../frame/useNarrow.ts';

/** How much ground a square of the graph paper is, and the keys that change it; on a phone those that take back. */
export const ZoomKeys = () => {
  const bench = useBench();
  const lengths = useSitePart((site) => site.lengths);
  const scale = useSession((state) => state.view.scale);
  const zoom = (times: number) => {
    const { width, height } = bench.pad.getState() ?? { width: 0, height: 0 };
    const middle = { x: width / 2, y: height / 2 };
    bench.session.setState(({ view }) => ({ view: zoomAt(view, middle, times) }));
  };
  const narrow = useNarrow();
  const square = formatLength(inches(rulingFor(scale, lengths.system).fine), lengths);
  return (
    <>
      <p className="gridsay">
        {phrase`one square ${square}`}
        <br />
        {phrase`Call before you dig.`}
      </p>
      {narrow && (
        <div className="undo-here">
          <UndoKeys />
        </div>
      )}
      <div className="zoom" role="group" aria-label={phrase`Zoom`}>
        <button type="button" aria-label={phrase`Smaller`} onClick={() => zoom(1 / 1.4)}>
          −
        </button>
        <button type="button" aria-label={phrase`Larger`} onClick={() => zoom(1.4)}>
          +
        </button>
        <button type="button" onClick={() => fitAll(bench)}>
          {phrase`Show all`}
        </button>
      </div>
    </>
  );
};
