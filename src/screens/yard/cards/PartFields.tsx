import { useState } from 'react';
import { addHardware } from '../../../site/edits/addHardware.ts';
import { changeHardware } from '../../../site/edits/changeHardware.ts';
import type { GateLayout } from '../../../engine/layout.ts';
import type { Hardware } from '../../../site/hardware.ts';
import type { HardwareId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import type { PartPlan } from '../../../store/plans.ts';
import { useBook, useLayout, useSite } from '../../bench.ts';
import { PartForm } from '../../book/PartForm.tsx';
import { partLine, partWords } from '../../book/partWords.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { catchFault } from '../../plans/catchFault.ts';
import { fittingOnly } from '../../plans/fittingOnly.ts';
import { gatesWith } from '../../plans/gatesWith.ts';
import { offeredParts } from '../../plans/offeredParts.ts';
import { BookKeys } from './BookKeys.tsx';
import { useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly label: string;
  readonly id: HardwareId | null;
  readonly kinds: readonly Hardware['kind'][];
  readonly gate: GateLayout;
  /** That the fields of another leaf have the same part already; null where none have. */
  readonly told?: string | null;
  /** What undo calls it when another part is chosen. */
  readonly change: string;
  /** Puts a part that the site carries into the gate. */
  readonly put: (site: Site, part: HardwareId) => Site;
}

/** A hinge or latch: which one, what it takes up, and, unfolded, everything that is known of it. */
export const PartFields = ({ label, id, kinds, gate, told = null, change, put }: Props) => {
  const site = useSite();
  const layout = useLayout();
  const book = useBook();
  const edit = useEdit();
  const [fault, setFault] = useState<string | null>(null);
  const part = id === null ? undefined : site.hardware[id];
  if (id === null || part === undefined) return null;
  const offered = offeredParts(site, book, kinds);
  const choose = (chosen: PartPlan) =>
    setFault(
      edit(change, (before) => {
        const stocked = addHardware(before, chosen.id, chosen.hardware);
        return fittingOnly(layout, gate, { before, after: put(stocked, chosen.id) });
      }),
    );
  const users = gatesWith(site, id);
  return (
    <div className="stack">
      <ChoiceField
        label={label}
        value={id}
        choices={offered.map((one) => ({ value: one.id, label: one.hardware.label }))}
        fault={fault}
        onChoose={(value) => {
          const chosen = offered.find((one) => one.id === value);
          if (chosen !== undefined) choose(chosen);
        }}
      />
      <p className="note">
        {told ??
          (users > 1
            ? phrase`${partLine(part, site.lengths)}; in ${users} gates, what is changed here holds for all`
            : partLine(part, site.lengths))}
      </p>
      {told === null && (
        <details className="more">
          <summary>{phrase`${label}: sizes and fit`}</summary>
          <div className="stack">
            <OwnFields id={id} part={part} />
            <BookKeys id={id} part={part} kinds={kinds} onChoose={choose} />
          </div>
        </details>
      )}
    </div>
  );
};

const OwnFields = ({ id, part }: { readonly id: HardwareId; readonly part: Hardware }) => {
  const site = useSite();
  const edit = useEdit();
  const words = partWords(part.kind, site.lengths);
  const change = (next: Hardware): string | null => {
    const typed = next.takes !== part.takes && next.readings === part.readings;
    const refused = typed ? catchFault(site, { id, takes: next.takes, words }) : null;
    return refused ?? edit(phrase`Change ${part.label}`, (was) => changeHardware(was, id, next));
  };
  return (
    <>
      <TextField
        label={phrase`Name`}
        value={part.label}
        onEnter={(text) => {
          const label = text.trim();
          return label === '' ? phrase`Name: expected one` : change({ ...part, label });
        }}
      />
      <PartForm part={part} style={site.lengths} onChange={change} />
    </>
  );
};
