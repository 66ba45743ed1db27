import { useCallback, type RefObject } from 'react';
import { isShown } from '../../editor/walk/walk.ts';
import type { Flag } from '../../engine/flag.ts';
import { phrase } from '../../phrases/phrase.ts';
import { cautions } from '../../trade/cautions.ts';
import type { Selection } from '../../store/selection.ts';
import type { ToolId } from '../../store/toolId.ts';
import { withLook } from '../../store/tour.ts';
import { useBench, useLayout, useSession, useSite } from '../bench.ts';
import { SiteRules } from '../townRules/SiteRules.tsx';
import { centreOn } from '../centreOn.ts';
import { useStored } from '../useStored.ts';
import { Card, cardTitle } from './cards/Card.tsx';
import { FlagList } from './FlagList.tsx';
import { KeysKey } from '../help/KeysKey.tsx';
import { GroundAndWind } from './GroundAndWind.tsx';
import { Measuring } from './Measuring.tsx';
import { NextBoundary } from './next/NextBoundary.tsx';
import { NextFence } from './next/NextFence.tsx';
import { NextGate } from './next/NextGate.tsx';
import { NextHeightZone } from './next/NextHeightZone.tsx';
import { NextShot } from './next/NextShot.tsx';
import { NextUtility } from './next/NextUtility.tsx';
import { NextTapes } from './next/NextTapes.tsx';
import { PutDownContext } from './putDown.ts';
import { StepKeys } from './StepKeys.tsx';
import { NextPictures } from './underlay/NextPictures.tsx';
import { FigureEntry } from './FigureEntry.tsx';
import { TypedEntry, type Sign } from './TypedEntry.tsx';
import { Unused } from './Unused.tsx';
import type { Walk } from './walk/useWalk.ts';
import { WalkPanel } from './walk/WalkPanel.tsx';
import { YardSummary } from './YardSummary.tsx';

/** What the key that pulls the card up says. */
const pullText = ({ length }: readonly Flag[]): string => {
  if (length === 0) return phrase`Pull up: no flags`;
  return length === 1 ? phrase`Pull up: 1 flag` : phrase`Pull up: ${length} flags`;
};

const Next = () => {
  const tool = useSession((state) => state.tool);
  if (tool === 'fence') return <NextFence />;
  if (tool === 'gate') return <NextGate />;
  if (tool === 'shot') return <NextShot />;
  if (tool === 'tape') return <NextTapes />;
  if (tool === 'boundary') return <NextBoundary />;
  if (tool === 'picture') return <NextPictures />;
  if (tool === 'sight triangle' || tool === 'front yard') return <NextHeightZone of={tool} />;
  return tool === 'utility' ? <NextUtility /> : null;
};

/** What is selected while the tool that drew it is in hand: its card goes before the next one's. */
const drawnBy: Readonly<Partial<Record<ToolId, readonly string[]>>> = {
  fence: ['line', 'leg'],
  gate: ['gate'],
  utility: ['feature'],
  'sight triangle': ['feature'],
  'front yard': ['feature'],
  shot: ['shot'],
  picture: ['underlay'],
};

/** The card of what is selected, and what is drawn next, so that neither is taken for the other. */
const Selected = ({ selection }: { readonly selection: Selection }) => {
  const tool = useSession((state) => state.tool);
  if (selection === null) {
    return (
      <>
        <Next />
        <YardSummary />
      </>
    );
  }
  if (drawnBy[tool]?.includes(selection.kind) !== true) {
    return (
      <>
        <Next />
        <Card selection={selection} />
      </>
    );
  }
  return (
    <>
      <Card selection={selection} />
      <details className="more">
        <summary>
          {tool === 'picture'
            ? phrase`All pictures, and one more`
            : phrase`What the next one will be`}
        </summary>
        <Next />
      </details>
    </>
  );
};

interface Props {
  readonly sign: Sign | null;
  readonly walk: Walk;
  /** Whether it is pulled up, on a phone. */
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly list: 'open' | 'closed';
  readonly onList: () => void;
  readonly head: RefObject<HTMLHeadingElement | null>;
  readonly listKey: RefObject<HTMLButtonElement | null>;
}

/** The card of what is selected, what is drawn next, and the flags; on a phone pulled up from below. */
export const SideSheet = (props: Props) => {
  const { sign, walk, open, onOpen, list, onList, head, listKey } = props;
  const bench = useBench();
  const { session } = bench;
  const selection = useSession((state) => state.selection);
  const site = useSite();
  const { flags } = useLayout();
  const piece = useStored(bench.sender.hand, (hand) => hand.piece);
  const asked = useStored(bench.sender.hand, (hand) => hand.asked);
  const steps = useStored(bench.sender.hand, (hand) => hand.steps);
  const putDown = useCallback(() => onOpen(false), [onOpen]);
  const goTo = (flag: Flag) => {
    session.setState(({ tour }) => ({
      selection: flag.place,
      tool: 'select',
      tour: withLook(tour, 'flag'),
    }));
    centreOn(bench, flag.at);
    // on a phone the card lies over the pad: put down, it shows the place
    onOpen(false);
  };
  return (
    <aside className="card" data-open={open} aria-label={phrase`Card`}>
      {piece !== null && list === 'closed' && <TypedEntry piece={piece} begun={sign} />}
      {asked !== null && list === 'closed' && <FigureEntry asked={asked} begun={sign} />}
      {steps !== null && <StepKeys steps={steps} />}
      {isShown(walk.state) && <WalkPanel walk={walk} />}
      <div className="card-head">
        <h2 ref={head} tabIndex={-1}>
          {selection === null ? phrase`This yard` : cardTitle(selection, site)}
        </h2>
        <button
          ref={listKey}
          type="button"
          aria-keyshortcuts="r"
          aria-expanded={list === 'open'}
          onClick={onList}
        >
          {phrase`List`}
        </button>
        {selection !== null && (
          <button type="button" onClick={() => session.setState({ selection: null })}>
            {phrase`Let go`}
          </button>
        )}
        <button
          type="button"
          className="pull"
          data-point={open ? undefined : 'pull up'}
          aria-expanded={open}
          onClick={() => onOpen(!open)}
        >
          {open ? phrase`Put down` : pullText(flags)}
        </button>
      </div>
      <div className="card-body">
        <PutDownContext value={putDown}>
          <Selected selection={selection} />
        </PutDownContext>
        <Measuring />
        <GroundAndWind />
        <SiteRules />
        <section aria-label={phrase`Flags`} data-point={flags.length === 0 ? undefined : 'flag'}>
          <h3>{phrase`Flags`}</h3>
          <FlagList flags={flags} onFlag={goTo} />
        </section>
        {selection === null && <Unused />}
        <p className="caution-line">{cautions[0]?.text}</p>
        <KeysKey />
      </div>
    </aside>
  );
};
