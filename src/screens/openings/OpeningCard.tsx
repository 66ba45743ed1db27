import { useMemo, useRef } from 'react';
import { Picture } from '../../canvas/Picture.tsx';
import { useSize } from '../../canvas/useSize.ts';
import { openingBar } from '../../drawing/opening/openingBar.ts';
import { palettes } from '../../drawing/palettes.ts';
import type { GateLayout } from '../../engine/layout.ts';
import type { GateStanding } from '../../engine/sign/standingsOf.ts';
import type { Gate } from '../../site/gate.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { useBench, useSession, useSite } from '../bench.ts';
import { centreOn } from '../centreOn.ts';
import { HungFields } from '../yard/cards/HungFields.tsx';
import { AsSetFields } from './asSet/AsSetFields.tsx';
import { FitList } from './FitList.tsx';
import { GateFacts } from './GateFacts.tsx';
import { GateFlags } from './GateFlags.tsx';
import { needWords } from './needWords.ts';
import { OrderSize } from './OrderSize.tsx';
import { Ranges } from './Ranges.tsx';
import { cardAt } from './showCard.ts';
import { SignOff, type Signer } from './SignOff.tsx';
import { Working } from './Working.tsx';

/** CSS pixels for a paper inch of the bar. */
const inch = 96;
const widest = 11;
const narrowest = 3.2;

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
  const name = drawn.label === '' ? 'Gate' : drawn.label;
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
        <p className="answer">
          <span>Opening to hold</span>
          <strong>{formatLength(gate.opening.target, fineStyle(site.lengths))}</strong>
        </p>
        <button type="button" onClick={show}>
          Show in the yard
        </button>
      </header>
      <GateFlags gate={gate.id} />
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
            <summary>Leaves and hardware</summary>
            <div className="halves">
              <HungFields gate={drawn} laid={gate} />
            </div>
          </details>
          <FitList gate={gate} name={name} />
          <OrderSize gate={gate} />
          <AsSetFields gate={gate.id} />
        </>
      )}
    </article>
  );
};

interface Drawn {
  readonly gate: GateLayout;
  readonly drawn: Gate;
}

const Bar = ({ gate, drawn, name }: Drawn & { readonly name: string }) => {
  const site = useSite();
  const theme = useSession((state) => state.theme);
  const room = useRef<HTMLDivElement>(null);
  const { width } = useSize(room);
  const style = fineStyle(site.lengths);
  const { nominal } = drawn;
  const bar = useMemo(() => {
    const paper = Math.min(widest, Math.max(narrowest, width / inch));
    return openingBar(gate.opening, { width: paper, style, ...(nominal !== null && { nominal }) });
  }, [gate.opening, width, style, nominal]);
  return (
    <div ref={room} className="bar">
      <Picture
        atoms={bar.atoms}
        palette={palettes[theme]}
        width={bar.width}
        height={bar.height}
        scale={inch}
        label={`${name}: hinges, leaves and gap across the opening, over a ruler that shows from where to where it holds`}
      />
    </div>
  );
};
