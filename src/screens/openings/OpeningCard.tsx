import { useMemo, useRef } from 'react';
import { Picture } from '../../canvas/Picture.tsx';
import { useSize } from '../../canvas/useSize.ts';
import { openingBar } from '../../drawing/opening/openingBar.ts';
import { palettes } from '../../drawing/palettes.ts';
import type { GateLayout } from '../../engine/layout.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { useBench, useLayout, useSession, useSite } from '../bench.ts';
import { centreOn } from '../centreOn.ts';
import { FlagList } from '../yard/FlagList.tsx';
import { Working } from './Working.tsx';

/** CSS pixels for a paper inch of the bar. */
const inch = 96;
const widest = 11;
const narrowest = 3.2;

/** One gate: its opening drawn to a stretched scale, the working, and the flags on it. */
export const OpeningCard = ({ gate }: { readonly gate: GateLayout }) => {
  const bench = useBench();
  const site = useSite();
  const { flags } = useLayout();
  const theme = useSession((state) => state.theme);
  const room = useRef<HTMLDivElement>(null);
  const { width } = useSize(room);
  const drawn = site.gates[gate.id];
  const style = fineStyle(site.lengths);
  const nominal = drawn?.nominal ?? null;
  const bar = useMemo(() => {
    const paper = Math.min(widest, Math.max(narrowest, width / inch));
    return openingBar(gate.opening, { width: paper, style, ...(nominal !== null && { nominal }) });
  }, [gate.opening, width, style, nominal]);
  const name = drawn === undefined || drawn.label === '' ? 'Gate' : drawn.label;
  const own = flags.filter(({ place }) => place.kind === 'gate' && place.id === gate.id);
  const show = () => {
    bench.session.setState({ tool: 'select', selection: { kind: 'gate', id: gate.id } });
    window.location.hash = '#yard';
    centreOn(bench, gate.middle);
  };
  return (
    <article className="opening" aria-label={name}>
      <header>
        <h2>{name}</h2>
        <p className="answer">
          <span>Opening to hold</span>
          <strong>{formatLength(gate.opening.target, style)}</strong>
        </p>
        <button type="button" onClick={show}>
          Show in the yard
        </button>
      </header>
      {!gate.placed && <p className="fault">This gate does not fit where it is anchored.</p>}
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
      <Working opening={gate.opening} style={style} name={name} />
      {own.length > 0 && <FlagList flags={own} onFlag={show} />}
    </article>
  );
};
