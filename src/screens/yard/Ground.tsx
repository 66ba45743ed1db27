import { useCallback, useMemo, useRef } from 'react';
import type { Signal } from '../../canvas/hand.ts';
import { heldKeys } from '../../canvas/heldKeys.ts';
import { Pad } from '../../canvas/Pad.tsx';
import type { WatchedView } from '../../canvas/usePad.ts';
import { useHeldKey } from '../../canvas/useHeldKey.ts';
import { palettes } from '../../drawing/palettes.ts';
import { touchedKnob } from '../../editor/bowKnob.ts';
import { hits, isSame, type Touch } from '../../editor/hit.ts';
import type { Input } from '../../editor/input.ts';
import type { Hand } from '../../editor/send.ts';
import { pictureHand } from '../../editor/tools/picture/taken.ts';
import { isShown } from '../../editor/walk/walk.ts';
import { panBy, type Pad as PadSize } from '../../editor/view.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { SessionStore } from '../../store/session.ts';
import { phrase } from '../../phrases/phrase.ts';
import { useBench, useLayout, useSession, useSite } from '../bench.ts';
import { fitAll } from '../fitAll.ts';
import { padInch } from '../padInch.ts';
import { useUnderPictures } from '../pictures/underPictures.ts';
import { useStored } from '../useStored.ts';
import { FirstSteps } from './FirstSteps.tsx';
import { isBare } from './isBare.ts';
import { litMarks } from './litMarks.ts';
import { LitLine } from './LitLine.tsx';
import { planOf } from './planOf.ts';
import { selectionMarks } from './selectionMarks.ts';
import type { Walk } from './walk/useWalk.ts';
import { walkMarks } from './walk/walkMarks.ts';
import type { WalkPlace } from './walk/walkPlace.ts';
import { ZoomKeys } from './ZoomKeys.tsx';

const [padUse, padPrompt] = ['pad-use', 'pad-prompt'];

const use = phrase`Arrow keys move the crosshair or what is selected, Space sets a mark, figures type the length of a piece, Enter ends the line, Escape leaves. R opens the yard as a list, in which all of this is done by typing.`;

interface SheetProps {
  readonly place: WalkPlace | null;
  readonly hand: Hand;
  readonly cross: SitePoint | null;
  readonly onInput: (input: Input) => void;
  readonly onHold: (touch: Touch) => void;
}

/** The view of the session, which passes by what else is in it. */
const viewOf = (session: SessionStore): WatchedView => ({
  now: () => session.getState().view,
  watch: (heard) =>
    session.subscribe(({ view }, before) => {
      if (view !== before.view) heard();
    }),
});

/** Pads that differ by no more than a few CSS pixels show the same. */
const isAsLarge = (a: PadSize, b: PadSize): boolean =>
  Math.abs(a.width - b.width) <= 6 && Math.abs(a.height - b.height) <= 6;

/** The pad itself: the drawing as it is now, what is selected, and what the tool shows. */
const DrawingPad = ({ place, hand, cross, onInput, onHold }: SheetProps) => {
  const bench = useBench();
  const { session } = bench;
  const site = useSite();
  const layout = useLayout();
  const theme = useSession((state) => state.theme);
  const tool = useSession((state) => state.tool);
  const selection = useSession((state) => state.selection);
  const lit = useSession((state) => state.lit);
  const space = useHeldKey(heldKeys.pan);
  const { system } = site.lengths;
  const groups = planOf(site, layout);
  const pictures = useUnderPictures();
  const [palette, inch] = [palettes[theme], padInch[theme]];
  const still = { groups, palette, inch, system, pictures };
  const means = (touch: Touch, kind: Signal['kind']): Signal['means'] => {
    if (tool === 'pan' || space) return 'pan';
    if (tool === 'picture') return pictureHand(site, selection, touch, kind);
    if (tool !== 'select') return 'draw';
    const all = hits(site, layout, touch);
    const [first = null] = all;
    if (first === null) return 'tap';
    if (kind !== 'touch') return 'draw';
    // a finger that pans must not move what it comes down on: only what is selected is dragged
    if (first.kind !== 'gate' && touchedKnob(layout, selection, touch) !== null) return 'draw';
    const ground = selection?.kind === 'feature' && all.some((one) => isSame(one, selection));
    return ground || isSame(first, selection) ? 'draw' : 'tap';
  };
  const fitted = useRef(bench.viewKept);
  const measured = useCallback(
    (size: PadSize) => {
      const was = bench.pad.getState();
      bench.pad.setState(size, true);
      const first = !fitted.current;
      fitted.current = true;
      // all is shown once, for the room that there is: the first drawing may have had another
      if (first && (was === null || !isAsLarge(size, was))) return fitAll(bench);
      if (was === null) return;
      // what was in the middle stays there
      const by = { x: (size.width - was.width) / 2, y: (size.height - was.height) / 2 };
      session.setState(({ view: seen }) => ({ view: panBy(seen, by) }));
    },
    [bench, session],
  );
  const view = useMemo(() => viewOf(session), [session]);
  const drawing = tool === 'select' ? 'default' : 'crosshair';
  return (
    <Pad
      still={still}
      live={(scale) => [
        ...(place === null ? [] : walkMarks(place)),
        ...selectionMarks(site, layout, { selection, scale }),
        ...litMarks(layout, lit, scale),
        ...hand.preview,
      ]}
      view={view}
      cross={tool === 'select' && selection !== null ? null : cross}
      cursor={tool === 'pan' || space ? 'grab' : drawing}
      means={means}
      label={phrase`Drawing pad`}
      describedBy={`${padUse} ${padPrompt}`}
      onView={(change) => session.setState((state) => ({ view: change(state.view) }))}
      onInput={onInput}
      onHold={onHold}
      onSize={measured}
    />
  );
};

interface Props {
  readonly walk: Walk;
  readonly cross: SitePoint | null;
  /** Called when a pointer takes over from the keys. */
  readonly onPointer: () => void;
  /** Called when the card of what a finger rests on is asked for. */
  readonly onCard: () => void;
}

/** The pad with what lies over it: what to do next, and the keys that zoom. */
export const Ground = ({ walk, cross, onPointer, onCard }: Props) => {
  const { sender, session, pointer } = useBench();
  const site = useSite();
  const layout = useLayout();
  const bare = isBare(site);
  const touring = useSession((state) => state.tour !== null);
  const tool = useSession((state) => state.tool);
  const walking = isShown(walk.state);
  const hand = useStored(sender.hand, (state) => state);
  const onInput = (input: Input): void => {
    if ('at' in input) {
      pointer.setState(input.at, true);
      if (cross !== null) onPointer();
    }
    sender.send(input);
  };
  const onHold = (touch: Touch): void => {
    if (hits(site, layout, touch).length === 0) return;
    session.setState({ tool: 'select' });
    onInput({ do: 'press', ...touch, free: false });
    onInput({ do: 'release', ...touch, free: false });
    onCard();
  };
  return (
    <div className="ground" data-point="pad">
      <DrawingPad place={walk.place} hand={hand} cross={cross} onInput={onInput} onHold={onHold} />
      <p id={padUse} className="unseen">
        {use}
      </p>
      <p id={padPrompt} className="prompt">
        {hand.prompt}
      </p>
      <LitLine />
      {bare && tool === 'select' && !walking && !touring && <FirstSteps />}
      <ZoomKeys />
    </div>
  );
};
