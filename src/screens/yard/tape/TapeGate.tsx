import { useRef } from 'react';
import type { TapeStrip } from '../../../drawing/tape/tapeStrip.ts';
import { tapeLevels } from '../../../drawing/tape/tapeLevels.ts';
import { reachAt, stationAt } from '../../../drawing/tape/tapeReach.ts';
import type { Run } from '../../../engine/layout.ts';
import { stationInPlan } from '../../../engine/posts/stationInPlan.ts';
import { trackAt } from '../../../geometry/track.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { inches } from '../../../units/inches.ts';
import { useBench, useSession, useSite } from '../../bench.ts';

interface Props {
  readonly strip: TapeStrip;
  readonly place: TapeStrip['gates'][number];
  readonly run: Run;
  /** CSS pixels for a paper inch. */
  readonly inch: number;
}

/** On the ground under a place on the strip, CSS pixels from its left. */
const groundAt = ({ strip, run, inch }: Props, x: number): SitePoint => {
  const reaches = strip.reaches.filter((reach) => reach.run === run.id);
  const reach = reachAt(reaches, x / inch);
  const station = stationInPlan(run, reach === null ? inches(0) : stationAt(reach, x / inch));
  return trackAt(run, station);
};

/** The handle reaches from under the tags to the foot of the tape, paper inches. */
const [top, bottom] = [tapeLevels.tags + 0.09, tapeLevels.bodyBottom + 0.03];
/** Narrower gates get a handle this wide, in CSS pixels. */
const narrowest = 44;

/** A gate on the tape: tap it to select, drag it along; the hand is passed on to the select tool. */
export const TapeGate = (props: Props) => {
  const { place, inch } = props;
  const { session, sender } = useBench();
  const site = useSite();
  const chosen = useSession(
    ({ selection }) => selection?.kind === 'gate' && selection.id === place.gate,
  );
  /** How far the pointer is from the middle of the gate, and where the strip begins on the screen. */
  const held = useRef<{ readonly off: number; readonly left: number } | null>(null);
  const middle = ((place.from + place.to) / 2) * inch;
  const width = Math.max(narrowest, (place.to - place.from) * inch);
  const touch = (at: SitePoint) => ({ at, reach: inches(3), free: false });
  const name = site.gates[place.gate]?.label ?? '';
  return (
    <button
      type="button"
      className="tape-gate"
      aria-pressed={chosen}
      aria-label={phrase`${name === '' ? phrase`Gate` : name}: select, or drag along the tape`}
      style={{ left: middle - width / 2, width, top: top * inch, height: (bottom - top) * inch }}
      onClick={() =>
        session.setState({ tool: 'select', selection: { kind: 'gate', id: place.gate } })
      }
      onPointerDown={(event) => {
        const left = event.currentTarget.parentElement?.getBoundingClientRect().left ?? 0;
        held.current = { off: event.clientX - left - middle, left };
        event.currentTarget.setPointerCapture(event.pointerId);
        session.setState({ tool: 'select' });
        sender.send({ do: 'press', ...touch(groundAt(props, middle)) });
      }}
      onPointerMove={(event) => {
        if (held.current === null) return;
        const x = event.clientX - held.current.left - held.current.off;
        sender.send({ do: 'move', ...touch(groundAt(props, x)) });
      }}
      onPointerUp={(event) => {
        if (held.current === null) return;
        const x = event.clientX - held.current.left - held.current.off;
        held.current = null;
        sender.send({ do: 'release', ...touch(groundAt(props, x)) });
      }}
      onPointerCancel={() => {
        held.current = null;
        sender.send({ do: 'leave' });
      }}
    />
  );
};
