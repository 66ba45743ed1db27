import type { ReactNode } from 'react';
import type { GateLayout } from '../../../engine/layout.ts';
import { removeGate } from '../../../site/edits/removeGate.ts';
import { renameGate } from '../../../site/edits/renameGate.ts';
import type { Gate } from '../../../site/gate.ts';
import type { GateId } from '../../../site/ids.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useLayout, useSite } from '../../bench.ts';
import { TextField } from '../../fields/TextField.tsx';
import { openingReasons } from '../../help/why/openingReasons.ts';
import { Why } from '../../help/why/Why.tsx';
import { PlaceLine } from '../../openings/PlaceLine.tsx';
import { StandingLine } from '../../openings/StandingLine.tsx';
import { Working } from '../../openings/Working.tsx';
import { AnchorFields } from './AnchorFields.tsx';
import { FittingFields } from './FittingFields.tsx';
import { HungFields } from './HungFields.tsx';
import { PassFields } from './PassFields.tsx';
import { useDo, useEdit } from './useEdit.ts';
import { WayFields } from './WayFields.tsx';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly gate: Gate;
  readonly laid: GateLayout;
}

/** A gate: the opening it needs, what hangs in it, and folded away all else that leads to it. */
export const GateCard = ({ id }: { readonly id: GateId }) => {
  const site = useSite();
  const laid = useLayout().gates[id];
  const make = useDo();
  const gate = site.gates[id];
  if (gate === undefined) return null;
  return (
    <section aria-label={phrase`Gate`}>
      {laid !== undefined && <Laid gate={gate} laid={laid} />}
      <Fold title={phrase`Name and place`}>
        <NameField id={id} label={gate.label} />
        <AnchorFields id={id} gate={gate} />
      </Fold>
      {laid !== undefined && (
        <Fold title={phrase`Working`}>
          <Working opening={laid.opening} style={site.lengths} name={gate.label} />
        </Fold>
      )}
      <button type="button" onClick={() => make(phrase`Delete gate`, (was) => removeGate(was, id))}>
        {phrase`Delete gate`}
      </button>
    </section>
  );
};

const Fold = ({ title, children }: { readonly title: string; readonly children: ReactNode }) => (
  <details className="more">
    <summary>{title}</summary>
    <div className="stack">{children}</div>
  </details>
);

const Laid = ({ gate, laid }: Props) => {
  const site = useSite();
  return (
    <>
      <Why
        of={phrase`the opening to hold`}
        reasons={() => openingReasons(laid.opening, site)}
        toured="opening"
      >
        <p className="answer">
          <span>{gate.way.kind === 'gap' ? phrase`Gap to hold` : phrase`Opening to hold`}</span>
          <strong>{formatLength(laid.opening.target, fineStyle(site.lengths))}</strong>
        </p>
      </Why>
      <StandingLine gate={laid.id} />
      <PlaceLine gate={laid.id} />
      <HungFields gate={gate} laid={laid} />
      <Fold title={phrase`How it closes`}>
        <WayFields gate={gate} laid={laid} />
      </Fold>
      <Fold title={phrase`What passes, latch, motor`}>
        <PassFields id={laid.id} gate={gate} />
      </Fold>
      {gate.way.kind !== 'gap' && (
        <Fold title={phrase`Ground, closer, hold-open, receiver`}>
          <FittingFields gate={gate} laid={laid} />
        </Fold>
      )}
    </>
  );
};

const NameField = ({ id, label }: { readonly id: GateId; readonly label: string }) => {
  const edit = useEdit();
  return (
    <TextField
      label={phrase`Name`}
      value={label}
      onEnter={(text) => edit(phrase`Name gate`, (was) => renameGate(was, id, text.trim()))}
    />
  );
};
