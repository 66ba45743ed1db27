import './jobs.css';
import { useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import type { JobHead } from '../../store/jobShelf.ts';
import { useBench } from '../bench.ts';
import { startNew } from '../files/startNew.ts';
import { SheetOver } from '../frame/SheetOver.tsx';
import { useStored } from '../useStored.ts';
import { KeepNote } from './KeepNote.tsx';
import { JobEntry } from './JobEntry.tsx';
import { isFound } from './jobName.ts';
import { useJobDeeds } from './useJobDeeds.ts';
import { useJobs } from './useJobs.ts';

interface BinProps {
  readonly count: number;
  readonly onEmpty: () => void;
}

/** Empties the bin once it was asked whether to. */
const EmptyBin = ({ count, onEmpty }: BinProps) => {
  const [asking, setAsking] = useState(false);
  const jobs = count === 1 ? phrase`1 job` : phrase`${count} jobs`;
  if (!asking) {
    return <button type="button" onClick={() => setAsking(true)}>{phrase`Empty the bin`}</button>;
  }
  return (
    <div role="group" aria-label={phrase`Empty the bin`}>
      <p>{phrase`Take ${jobs} off this device for good? This cannot be undone; files that were saved of them stay.`}</p>
      <div className="choices">
        <button
          type="button"
          onClick={() => {
            setAsking(false);
            onEmpty();
          }}
        >{phrase`Take off for good`}</button>
        <button type="button" onClick={() => setAsking(false)}>{phrase`Keep them`}</button>
      </div>
    </div>
  );
};

/** The jobs that are kept on this device, and its bin. */
export const JobsSheet = ({ onClose }: { readonly onClose: () => void }) => {
  const bench = useBench();
  const { jobs, fault, read, setFault } = useJobs();
  const { deeds, empty } = useJobDeeds({ onOpened: onClose, read, setFault });
  const pad = useStored(bench.site, (state) => state.pad.job);
  const [looked, setLooked] = useState('');
  const all = jobs?.heads ?? [];
  const shelf = all.filter(({ binned }) => binned === null);
  const bin = all.filter(({ binned }) => binned !== null);
  const found = shelf.filter((job) => isFound(job, looked));
  const list = (heads: readonly JobHead[]) => (
    <ul className="jobs">
      {heads.map((job) => (
        <JobEntry
          key={job.id}
          job={job}
          look={jobs?.looks.get(job.id)}
          onPad={job.id === pad}
          deeds={deeds}
        />
      ))}
    </ul>
  );
  return (
    <SheetOver title={phrase`Jobs`} onClose={onClose}>
      <KeepNote />
      {fault !== null && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      <section aria-label={phrase`On the shelf`}>
        <div className="choices">
          <button
            type="button"
            onClick={() => {
              startNew(bench);
              onClose();
            }}
          >{phrase`New yard`}</button>
        </div>
        {shelf.length > 0 && (
          <div className="field">
            <label htmlFor="jobs-looked">{phrase`Find by name, customer or place`}</label>
            <input
              id="jobs-looked"
              type="search"
              value={looked}
              onChange={(event) => setLooked(event.target.value)}
            />
          </div>
        )}
        {jobs !== null && shelf.length === 0 && (
          <p>{phrase`No job is kept yet. The first thing that you draw makes one.`}</p>
        )}
        {shelf.length > 0 && found.length === 0 && <p>{phrase`No job has these words.`}</p>}
        {list(found)}
      </section>
      {bin.length > 0 && (
        <section aria-label={phrase`In the bin`}>
          <h3>{phrase`In the bin`}</h3>
          {list(bin)}
          <EmptyBin count={bin.length} onEmpty={() => empty(bin.map(({ id }) => id))} />
        </section>
      )}
    </SheetOver>
  );
};
