import { useState } from 'react';
import { Picture } from '../../canvas/Picture.tsx';
import type { Atom } from '../../drawing/atom.ts';
import { palettes } from '../../drawing/palettes.ts';
import { smallPlanSize } from '../../drawing/plan/smallPlan.ts';
import { phrase } from '../../phrases/phrase.ts';
import { language } from '../../phrases/speak.ts';
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

/** A day and time as the reader's country writes it, in the language of the screen. */
const whenText = (at: number): string => {
  const own = navigator.languages.filter((tag) => tag.split('-')[0] === language());
  const how = { dateStyle: 'medium', timeStyle: 'short' } as const;
  return new Intl.DateTimeFormat([...own, language()], how).format(at);
};

const atomsOf = (look: unknown): readonly Atom[] | null =>
  isPlain(look) && Array.isArray(look['atoms']) ? (look['atoms'] as readonly Atom[]) : null;

const Look = ({ look, label }: { readonly look: unknown; readonly label: string }) => {
  const theme = useSession((state) => state.theme);
  const atoms = atomsOf(look);
  if (atoms === null) return <div className="job-look">{phrase`Nothing drawn yet`}</div>;
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
      <Look look={look} label={phrase`Plan of ${name}`} />
      <div className="job-said">
        <h3>{name}</h3>
        {said !== '' && <p>{said}</p>}
        <p className="note">
          {onPad
            ? phrase`On the pad. Last worked on ${whenText(job.worked)}`
            : phrase`Last worked on ${whenText(job.worked)}`}
        </p>
        {renaming && (
          <TextField
            label={phrase`New name`}
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
            <button
              type="button"
              onClick={() => deeds.takeBack(job)}
            >{phrase`Take out of the bin`}</button>
          ) : (
            <>
              <button type="button" onClick={() => deeds.open(job)}>
                {onPad ? phrase`Go on` : phrase`Open`}
              </button>
              <button
                type="button"
                onClick={() => deeds.duplicate(job)}
              >{phrase`Duplicate`}</button>
              <button
                type="button"
                aria-expanded={renaming}
                onClick={() => setRenaming(!renaming)}
              >{phrase`Rename`}</button>
              {!onPad && (
                <button
                  type="button"
                  onClick={() => deeds.bin(job)}
                >{phrase`Put into the bin`}</button>
              )}
            </>
          )}
        </div>
      </div>
    </li>
  );
};
