import { changeJob } from '../../site/edits/changeJob.ts';
import { setLengths } from '../../site/edits/setLengths.ts';
import type { Site } from '../../site/site.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { attempt } from '../attempt.ts';
import { useBench, useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { FileKeys } from '../files/FileKeys.tsx';
import { SheetOver } from './SheetOver.tsx';
import { ThemeSwitch } from './ThemeSwitch.tsx';

const entries: readonly { readonly key: keyof Site['job']; readonly label: string }[] = [
  { key: 'name', label: 'Job name' },
  { key: 'customer', label: 'Customer' },
  { key: 'place', label: 'Place' },
  { key: 'drawnBy', label: 'Drawn by' },
  { key: 'date', label: 'Date' },
  { key: 'revision', label: 'Revision' },
];

const systems: readonly { readonly value: LengthSystem; readonly label: string }[] = [
  { value: 'feet', label: 'Feet, inches, fractions' },
  { value: 'inches', label: 'Inches, fractions' },
  { value: 'decimal feet', label: 'Decimal feet' },
  { value: 'mm', label: 'Millimetres' },
  { value: 'm', label: 'Metres' },
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
    <SheetOver title="Job &amp; file" onClose={onClose}>
      <section aria-label="Files">
        <div className="choices">
          <button type="button" onClick={onJobs}>
            Jobs on this device
          </button>
        </div>
        <FileKeys onOpened={onClose} />
      </section>
      <section aria-label="Light">
        <h3>Light</h3>
        <ThemeSwitch />
      </section>
      <section aria-label="Job">
        <h3>Title block</h3>
        <div className="pair">
          {entries.map(({ key, label }) => (
            <TextField
              key={key}
              label={label}
              value={job[key]}
              onEnter={(text) =>
                attempt(bench, {
                  label: `Change ${label.toLowerCase()}`,
                  on: (site) => changeJob(site, { [key]: text.trim() }),
                })
              }
            />
          ))}
        </div>
        <TextField
          label="Remarks"
          lines={3}
          value={job.remark}
          onEnter={(remark) =>
            attempt(bench, { label: 'Change remarks', on: (site) => changeJob(site, { remark }) })
          }
        />
      </section>
      <section aria-label="Lengths">
        <h3>Lengths</h3>
        <div className="pair">
          <ChoiceField
            label="Written in"
            value={lengths.system}
            choices={systems}
            onChoose={(system) =>
              void attempt(bench, {
                label: 'Change units',
                on: (site) => setLengths(site, { system }),
              })
            }
          />
          <ChoiceField
            label="Finest fraction"
            value={`${lengths.fraction}`}
            choices={fractions.map((value) => ({ value, label: `1/${value} in` }))}
            onChoose={(text) => {
              const fraction = Number(text) as Site['lengths']['fraction'];
              void attempt(bench, {
                label: 'Change fraction',
                on: (site) => setLengths(site, { fraction }),
              });
            }}
          />
        </div>
      </section>
    </SheetOver>
  );
};
