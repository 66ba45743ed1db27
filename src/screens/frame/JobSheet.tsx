import { phrase } from '../../phrases/phrase.ts';
import { changeJob } from '../../site/edits/changeJob.ts';
import { setLengths } from '../../site/edits/setLengths.ts';
import type { Site } from '../../site/site.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { attempt } from '../attempt.ts';
import { useBench, useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { FileKeys } from '../files/FileKeys.tsx';
import { LanguageChoice } from './LanguageChoice.tsx';
import { SheetOver } from './SheetOver.tsx';
import { ThemeSwitch } from './ThemeSwitch.tsx';

const entries: readonly {
  readonly key: keyof Site['job'];
  readonly label: string;
  readonly change: string;
}[] = [
  { key: 'name', label: phrase`Job name`, change: phrase`Change job name` },
  { key: 'customer', label: phrase`Customer`, change: phrase`Change customer` },
  { key: 'place', label: phrase`Place`, change: phrase`Change place` },
  { key: 'drawnBy', label: phrase`Drawn by`, change: phrase`Change drawn by` },
  { key: 'date', label: phrase`Date`, change: phrase`Change date` },
  { key: 'revision', label: phrase`Revision`, change: phrase`Change revision` },
];

const systems: readonly { readonly value: LengthSystem; readonly label: string }[] = [
  { value: 'feet', label: phrase`Feet, inches, fractions` },
  { value: 'inches', label: phrase`Inches, fractions` },
  { value: 'decimal feet', label: phrase`Decimal feet` },
  { value: 'mm', label: phrase`Millimetres` },
  { value: 'm', label: phrase`Metres` },
];

const fractions = ['2', '4', '8', '16', '32'] as const;

interface Props {
  readonly onClose: () => void;
  /** Puts the list of jobs in the place of this sheet. */
  readonly onJobs: () => void;
}

/** What the title block says, how lengths are written, the light, and the files. */
export const JobSheet = ({ onClose, onJobs }: Props) => {
  const bench = useBench();
  const { job, lengths } = useSite();
  return (
    <SheetOver title={phrase`Job & file`} onClose={onClose}>
      <section aria-label={phrase`Files`}>
        <div className="choices">
          <button type="button" onClick={onJobs}>{phrase`Jobs on this device`}</button>
        </div>
        <FileKeys onOpened={onClose} />
      </section>
      <LanguageChoice />
      <section aria-label={phrase`Light`}>
        <h3>{phrase`Light`}</h3>
        <ThemeSwitch />
      </section>
      <section aria-label={phrase`Job`}>
        <h3>{phrase`Title block`}</h3>
        <div className="pair">
          {entries.map(({ key, label, change }) => (
            <TextField
              key={key}
              label={label}
              value={job[key]}
              onEnter={(text) =>
                attempt(bench, {
                  label: change,
                  on: (site) => changeJob(site, { [key]: text.trim() }),
                })
              }
            />
          ))}
        </div>
        <TextField
          label={phrase`Remarks`}
          lines={3}
          value={job.remark}
          onEnter={(remark) =>
            attempt(bench, {
              label: phrase`Change remarks`,
              on: (site) => changeJob(site, { remark }),
            })
          }
        />
      </section>
      <section aria-label={phrase`Lengths`}>
        <h3>{phrase`Lengths`}</h3>
        <div className="pair">
          <ChoiceField
            label={phrase`Written in`}
            value={lengths.system}
            choices={systems}
            onChoose={(system) =>
              void attempt(bench, {
                label: phrase`Change units`,
                on: (site) => setLengths(site, { system }),
              })
            }
          />
          <ChoiceField
            label={phrase`Finest fraction`}
            value={`${lengths.fraction}`}
            choices={fractions.map((value) => ({ value, label: phrase`1/${value} in` }))}
            onChoose={(text) => {
              const fraction = Number(text) as Site['lengths']['fraction'];
              void attempt(bench, {
                label: phrase`Change fraction`,
                on: (site) => setLengths(site, { fraction }),
              });
            }}
          />
        </div>
      </section>
    </SheetOver>
  );
};
