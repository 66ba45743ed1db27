import { useMemo } from 'react';
import { setMarks } from '../../drawing/opening/setMarks.ts';
import type { GateLayout } from '../../engine/layout.ts';
import type { GateStanding } from '../../engine/sign/standingsOf.ts';
import type { Gate } from '../../site/gate.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { useBench, useSite } from '../bench.ts';
import { centreOn } from '../centreOn.ts';
import { openingReasons } from '../help/why/openingReasons.ts';
import { Why } from '../help/why/Why.tsx';
import { HungFields } from '../yard/cards/HungFields.tsx';
import { PassFields } from '../yard/cards/PassFields.tsx';
import { SetRecord } from './asSet/SetRecord.tsx';
import { showRecord } from './asSet/showRecord.ts';
import { FitList } from './FitList.tsx';
import { GateFacts } from './GateFacts.tsx';
import { GateFlags } from './GateFlags.tsx';
import { needWords } from './needWords.ts';
import { OpeningBar } from './OpeningBar.tsx';
import { OrderSize } from './OrderSize.tsx';
import { PlaceLine } from './PlaceLine.tsx';
import { Ranges } from './Ranges.tsx';
import { cardAt } from './showCard.ts';
import { SignOff, type Signer } from './SignOff.tsx';
import { Working } from './Working.tsx';
import { phrase } from '../../phrases/phrase.ts';

interface Props {
  readonly gate: GateLayout;
  readonly standing: GateStanding;
  readonly signer: Signer;
  readonly onSigner: (signer: Signer) => void;
}

/** One gate: its opening drawn to a stretched scale, what it comes from, and its sign-off. */
export const OpeningCard = ({ gate, standing, signer, onSigner }: Props) => {
  const bench = useBench();
  const site = useSite();
  const drawn = site.gates[gate.id];
  if (drawn === undefined) return null;
  const name = drawn.label === '' ? phrase`Gate` : drawn.label;
  const show = () => {
    bench.session.setState({ tool: 'select', selection: { kind: 'gate', id: gate.id } });
    window.location.hash = '#yard';
    centreOn(bench, gate.middle);
  };
  return (
    <article className="opening" aria-label={name} id={cardAt(gate.id)} tabIndex={-1}>
      <header>
        <h2>
          {name} <b className={`need ${standing.need}`}>{needWords[standing.need]}</b>
        </h2>
        <Why
          of={phrase`the opening to hold, ${name}`}
          reasons={() => openingReasons(gate.opening, site)}
          toured="opening"
        >
          <p className="answer">
            <span>{phrase`Opening to hold`}</span>
            <strong>{formatLength(gate.opening.target, fineStyle(site.lengths))}</strong>
          </p>
        </Why>
        <div className="choices">
          <button type="button" onClick={show}>
            {phrase`Show in the yard`}
          </button>
          <button type="button" onClick={() => showRecord(gate.id)}>
            {phrase`Record as set`}
          </button>
        </div>
      </header>
      <GateFlags gate={gate.id} />
      <PlaceLine gate={gate.id} />
      <Bar gate={gate} drawn={drawn} name={name} />
      <Working opening={gate.opening} style={site.lengths} name={name} />
      <div className="halves">
        <div className="stack">
          <GateFacts gate={gate} />
          <Ranges opening={gate.opening} style={site.lengths} name={name} />
        </div>
        <SignOff gate={standing} signer={signer} onSigner={onSigner} />
      </div>
      {drawn.way.kind !== 'gap' && (
        <>
          <details className="more">
            <summary>{phrase`Leaves and hardware`}</summary>
            <div className="halves">
              <HungFields gate={drawn} laid={gate} />
            </div>
          </details>
          <details className="more">
            <summary>{phrase`What passes, latch, motor`}</summary>
            <PassFields id={gate.id} gate={drawn} />
          </details>
          <FitList gate={gate} name={name} />
          <OrderSize gate={gate} />
        </>
      )}
      <SetRecord gate={gate} drawn={drawn} name={name} />
    </article>
  );
};

interface Drawn {
  readonly gate: GateLayout;
  readonly drawn: Gate;
}

const Bar = ({ gate, drawn, name }: Drawn & { readonly name: string }) => {
  const site = useSite();
  const { nominal, asSet } = drawn;
  const set = useMemo(() => setMarks(site, asSet), [site, asSet]);
  const label =
    set.length === 0
      ? phrase`${name}: hinges, leaves and gap across the opening, over a ruler that shows from where to where it holds`
      : phrase`${name}: hinges, leaves and gap across the opening, over a ruler that shows where it holds and where the opening that was set came out`;
  return (
    <OpeningBar
      opening={gate.opening}
      set={set}
      {...(nominal !== null && { nominal })}
      label={label}
    />
  );
};
