import { useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { useSession, useSitePart } from '../bench.ts';
import { HelpKey } from '../help/HelpKey.tsx';
import { JobsSheet } from '../jobs/JobsSheet.tsx';
import { JobSheet } from './JobSheet.tsx';
import { SunKey } from './SunKey.tsx';
import { tabs } from './tabs.ts';
import { UndoKeys } from './UndoKeys.tsx';

/** The head of the clipboard: tabs, the clip with the job's name, undo and redo. */
export const Board = () => {
  const screen = useSession((state) => state.screen);
  const name = useSitePart(({ job }) => job.name);
  const [open, setOpen] = useState<'job' | 'jobs' | null>(null);
  return (
    <header className="board">
      <nav className="tabs" aria-label={phrase`Screens`}>
        {tabs.map((tab) => (
          <a
            key={tab.screen}
            href={`#${tab.screen}`}
            data-point={tab.screen === 'sheet' ? 'crew sheet' : tab.screen}
            aria-current={tab.screen === screen ? 'page' : undefined}
          >
            {tab.label}
          </a>
        ))}
      </nav>
      <div className="clip">
        <button type="button" onClick={() => setOpen('job')} aria-haspopup="dialog">
          <small>{phrase`Job & file`}</small>
          <span>{name === '' ? phrase`Unnamed job` : name}</span>
        </button>
      </div>
      <div className="board-keys">
        <HelpKey />
        <SunKey />
        <span className="undo-above">
          <UndoKeys />
        </span>
      </div>
      {open === 'job' && <JobSheet onClose={() => setOpen(null)} onJobs={() => setOpen('jobs')} />}
      {open === 'jobs' && <JobsSheet onClose={() => setOpen(null)} />}
    </header>
  );
};
