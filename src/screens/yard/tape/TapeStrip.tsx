import './tape.css';
import { useMemo, useRef, useState } from 'react';
import { Picture } from '../../../canvas/Picture.tsx';
import { useSize } from '../../../canvas/useSize.ts';
import { LetteredBefore } from '../../../drawing/lettering/letteredBefore.ts';
import { palettes } from '../../../drawing/palettes.ts';
import { wholeRun } from '../../../drawing/tape/tapePiece.ts';
import { tapeStrip } from '../../../drawing/tape/tapeStrip.ts';
import type { LineLayout } from '../../../engine/layout.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { useLayout, useSession, useSite } from '../../bench.ts';
import { TapeGate } from './TapeGate.tsx';
import { TapeHead } from './TapeHead.tsx';
import { litOnTape } from './litOnTape.ts';
import { tapeLine } from './tapeLine.ts';

/** CSS pixels for a paper inch on the strip. */
const inchOf = { day: 88, dark: 88, sun: 98 } as const;
/** A bay of 10 ft is 0.42 in of paper at least, so that its readings stand apart. */
const leastScale = 0.42 / 120;

/** CSS pixels that the heights of a profile may take, and around the strip for a scroll bar. */
const profileRoom = 78;
const barRoom = 16;

/** The picture is that much too high at most, and cut off: so it keeps its size while readings grow; paper inches. */
const step = 0.25;

interface StripProps {
  readonly line: LineLayout;
  readonly profile: 'shown' | 'folded';
}

const Strip = ({ line, profile }: StripProps) => {
  const [site, layout] = [useSite(), useLayout()];
  const theme = useSession((state) => state.theme);
  const lit = useSession((state) => state.lit);
  const room = useRef<HTMLDivElement>(null);
  const { width } = useSize(room);
  const [scrolled, setScrolled] = useState(0);
  const [before] = useState(() => new LetteredBefore());
  const inch = inchOf[theme];
  const hook = site.lines[line.id]?.hook ?? 'start';
  // drawn a little ahead on both sides, so that it is not drawn anew with every step of a scroll
  const wide = Math.max(4, width / inch);
  const quarter = Math.floor((4 * scrolled) / inch / wide);
  const strip = useMemo(
    () =>
      tapeStrip(
        site,
        layout,
        line.runs.map((run) => wholeRun(run, hook)),
        {
          width: wide,
          style: site.lengths,
          leastScale,
          before,
          seen: { from: ((quarter - 1) * wide) / 4, to: ((quarter + 6) * wide) / 4 },
          ...(profile === 'shown' ? { profile: profileRoom / inch } : {}),
        },
      ),
    [site, layout, line, hook, wide, quarter, inch, profile, before],
  );
  const atoms = useMemo(() => {
    const { under, over } = litOnTape(line.id, strip, lit);
    return [...under, ...strip.atoms, ...over];
  }, [line, strip, lit]);
  return (
    <div
      ref={room}
      className="tape-room"
      role="region"
      aria-label={phrase`Tape of the fence line`}
      tabIndex={0}
      style={strip.profile === null ? undefined : { height: strip.height * inch + barRoom }}
      onScroll={(event) => setScrolled(event.currentTarget.scrollLeft)}
    >
      <div style={{ width: strip.width * inch, height: strip.height * inch }}>
        <div className="tape-window" style={{ height: strip.height * inch }}>
          <Picture
            atoms={atoms}
            palette={palettes[theme]}
            width={Math.min(width / inch, strip.width)}
            height={Math.ceil(strip.height / step) * step}
            scale={inch}
            from={scrolled / inch}
            label={phrase`The fence line unrolled as a tape, with the reading at each post`}
          />
        </div>
        {strip.gates.map((place) => {
          const run = line.runs.find(({ id }) => id === place.run);
          return (
            run !== undefined && (
              <TapeGate key={place.gate} strip={strip} place={place} run={run} inch={inch} />
            )
          );
        })}
      </div>
    </div>
  );
};

/** A screen less high than this, in CSS pixels, keeps its room for the pad until it is asked. */
const roomy = 1000;

/** The tape along the bottom: the selected fence line unrolled, its gates to be dragged along it. */
export const TapeStrip = () => {
  const [site, layout] = [useSite(), useLayout()];
  const selection = useSession((state) => state.selection);
  const lit = useSession((state) => state.lit);
  const [open, setOpen] = useState(() => window.innerWidth > 760);
  const [profile, setProfile] = useState<StripProps['profile']>(() =>
    window.innerHeight >= roomy && window.innerWidth > 760 ? 'shown' : 'folded',
  );
  const id = tapeLine(site, layout, { selection, lit });
  const line = id === null ? undefined : layout.lines[id];
  if (line === undefined) {
    return (
      <section className="tape" aria-label={phrase`Tape`}>
        <p className="tape-blank">{phrase`The fence that you draw is unrolled here as a tape.`}</p>
      </section>
    );
  }
  return (
    <section className="tape" aria-label={phrase`Tape`}>
      <TapeHead
        line={line}
        open={open}
        onOpen={() => setOpen(!open)}
        profile={open && line.runs.some(({ ground }) => ground !== null) ? profile : null}
        onProfile={() => setProfile(profile === 'shown' ? 'folded' : 'shown')}
      />
      {open && <Strip line={line} profile={profile} />}
    </section>
  );
};
