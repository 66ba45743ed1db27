import { phrase } from '../../phrases/phrase.ts';
import { usualCounting } from '../../site/counting.ts';
import { setCounting } from '../../site/edits/setCounting.ts';
import { useBench, useSession, useSite } from '../bench.ts';
import { useDo } from '../yard/cards/useEdit.ts';

/** What new sites count by, in one line. */
const startText = (kept: 'nothing' | 'these' | 'others'): string => {
  switch (kept) {
    case 'nothing':
      return phrase`New sites begin with what the trade counts.`;
    case 'these':
      return phrase`New sites begin with what this site counts. It is kept on this device.`;
    case 'others':
      return phrase`New sites begin with other numbers than this site has. They are kept on this device.`;
  }
};

/** Keys for the numbers of this site as the start of new ones, and back to those of the trade. */
export const CountingKeys = () => {
  const { session } = useBench();
  const site = useSite();
  const make = useDo();
  const counting = useSession((state) => state.counting);
  const isKept = counting !== null && setCounting(site, counting) === site;
  const isUsual = setCounting(site, usualCounting) === site;
  return (
    <div className="stack">
      <p className="note" role="status">
        {startText(counting === null ? 'nothing' : isKept ? 'these' : 'others')}
      </p>
      <div className="choices">
        <button
          type="button"
          disabled={isKept || (counting === null && isUsual)}
          onClick={() =>
            session.setState({
              counting: site.counting,
              say: phrase`New sites count as this one does`,
            })
          }
        >{phrase`Keep these for new sites`}</button>
        {counting !== null && (
          <button
            type="button"
            onClick={() =>
              session.setState({ counting: null, say: phrase`New sites count as the trade does` })
            }
          >{phrase`Forget what is kept`}</button>
        )}
        <button
          type="button"
          disabled={isUsual}
          onClick={() =>
            make(phrase`Count as the trade does`, (was) => setCounting(was, usualCounting))
          }
        >{phrase`Back to what the trade counts`}</button>
      </div>
    </div>
  );
};
