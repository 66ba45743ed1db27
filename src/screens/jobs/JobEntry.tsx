import { useState } from 'react';
import { Picture } from '../../canvas/Picture.tsx';
import type { Atom } from '../../drawing/atom.ts';
import { palettes } from '../../drawing/palettes.ts';
import { smallPlanSize } from '../../drawing/plan/smallPlan.ts';
import { isPlain } from '../../site/isPlain.ts';
import type { JobHead } from '../../store/jobShelf.ts';
import { useSession } from '../bench.ts';
import { TextField } from '../fields/TextField.tsx';
import { jobName } from './jobName.ts';

/** What can be done with a job; each gives back its one line where it could not be. */
export interface JobDeeds {
  readonly open: (job: JobHead) => void;
  readonly duplicate: (job: JobHead) => void;
  readonly rename: (job: JobHead, name: string) => void;
  readonly bin: (job: JobHead) => void;
  readonly takeBack: (job: JobHead) => void;
}

interface Props {
  readonly job: JobHead;
  readonly look: unknown;
  readonly onPad: boolean;
  readonly deeds: JobDeeds;
}

const when = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

const atomsOf = (look: unknown): readonly Atom[] | null =>
  isPlain(look) && Array.isArray(look['atoms']) ? (look['atoms'] as readonly Atom[]) : null;

const Look = ({ look, label }: { readonly look: unknown; readonly label: string }) => {
  const theme = useSession((state) => state.theme);
  const atoms = atomsOf(look);
  if (atoms === null) return <div className="job-look">Nothing drawn yet</div>;
  const { width, height } = smallPlanSize;
  return (
    <div className="job-look">
      <Picture
        atoms={atoms}
        palette={palettes[theme]}
        width={width}
        height={height}
        scale={96}
        label={label}
      />
    </div>
  );
};

/** One job of the list: its small picture, what it is called, when it was worked on, and its keys. */
export const JobEntry = ({ job, look, onPad, deeds }: Props) => {
  const [renaming, setRenaming] = useState(false);
  const name = jobName(job);
  const said = [job.customer, job.place].filter((text) => text !== '').join(', ');
  return (
    <li className="job" aria-label={name}>
      <Look look={look} label={`Plan of ${name}`} />
      <div className="job-said">
        <h3>{name}</h3>
        {said !== '' && <p>{said}</p>}
        <p className="note">
          {onPad ? 'On the pad. ' : ''}Last worked on {when.format(job.worked)}
        </p>
        {renaming && (
          <TextField
            label="New name"
            value={job.name}
            onEnter={(text) => {
              deeds.rename(job, text.trim());
              setRenaming(false);
              return null;
            }}
          />
        )}
        <div className="choices">
          {job.binned !== null ? (
            <button type="button" onClick={() => deeds.takeBack(job)}>
              Take out of the bin
            </button>
          ) : (
            <>
              <button type="button" onClick={() => deeds.open(job)}>
                {onPad ? 'Go on' : 'Open'}
              </button>
              <button type="button" onClick={() => deeds.duplicate(job)}>
                Duplicate
              </button>
              <button type="button" aria-expanded={renaming} onClick={() => setRenaming(!renaming)}>
                Rename
              </button>
              {!onPad && (
                <button type="button" onClick={() => deeds.bin(job)}>
                  Put into the bin
                </button>
              )}
            </>
          )}
        </div>
      </div>
    </li>
  );
};
