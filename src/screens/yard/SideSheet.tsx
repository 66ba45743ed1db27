import { useState } from 'react';
import type { Flag } from '../../engine/flag.ts';
import { useBench, useLayout, useSession, useSite } from '../bench.ts';
import { centreOn } from '../centreOn.ts';
import { cautions } from '../../trade/cautions.ts';
import { Card, cardTitle } from './cards/Card.tsx';
import { FlagList } from './FlagList.tsx';

const countOf = (flags: readonly Flag[]): string =>
  flags.length === 0 ? 'no flags' : flags.length === 1 ? '1 flag' : `${flags.length} flags`;

/** The card of what is selected, and the flags; on a phone a sheet that is pulled up. */
export const SideSheet = () => {
  const bench = useBench();
  const { session } = bench;
  const selection = useSession((state) => state.selection);
  const site = useSite();
  const { flags } = useLayout();
  const [open, setOpen] = useState(false);
  const goTo = (flag: Flag) => {
    session.setState({ selection: flag.place, tool: 'select' });
    centreOn(bench, flag.at);
  };
  return (
    <aside className="card" data-open={open} aria-label="Card">
      <div className="card-head">
        <h2>{selection === null ? 'This yard' : cardTitle(selection, site)}</h2>
        <div className="choices">
          <button
            type="button"
            className="pull"
            aria-expanded={open}
            onClick={() => setOpen(!open)}
          >
            {open ? 'Put down' : `Card, ${countOf(flags)}`}
          </button>
          {selection !== null && (
            <button type="button" onClick={() => session.setState({ selection: null })}>
              Let go
            </button>
          )}
        </div>
      </div>
      <div className="card-body">
        {selection !== null && <Card selection={selection} />}
        <section aria-label="Flags">
          <h3>Flags</h3>
          <FlagList flags={flags} onFlag={goTo} />
        </section>
        <p className="caution-line">{cautions[0]?.text}</p>
      </div>
    </aside>
  );
};
