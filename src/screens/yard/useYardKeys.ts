import { isMetric } from '../../units/isMetric.ts';
import { useEffect } from 'react';
import type { SitePoint } from '../../geometry/point.ts';
import { rulingFor } from '../../canvas/paintGrid.ts';
import { useLatest } from '../../canvas/useLatest.ts';
import { toolbox } from '../../editor/toolbox.ts';
import { toGround, toSite, zoomAt } from '../../editor/view.ts';
import { current } from '../../store/history.ts';
import type { View } from '../../store/view.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import { useBench, type Bench } from '../bench.ts';
import { fitAll } from '../fitAll.ts';
import { belongsTo } from '../help/keys/belongsTo.ts';
import { pressedOf } from '../help/keys/pressedOf.ts';
import { keyDeed, type KeyDeed } from './padKeys.ts';

/** What the keys move besides the document. */
export interface KeyHand {
  readonly setCross: (at: SitePoint | null) => void;
  readonly onType: (sign: string) => void;
  readonly onList: () => void;
}

const letters = new Map(toolbox.map(({ id, key }) => [key.toLowerCase(), id] as const));

/** How near the crosshair has to be to a thing: CSS pixels at least, and a part of a square. */
const [leastReach, partOfSquare] = [9, 0.75];
/** An arrow nudges by an inch or a centimetre, with Shift by a foot or a metre. */
const nudges = { foot: [1, 12], metre: [1 / 2.54, 100 / 2.54] } as const;

const middleOfPad = ({ session, pad }: Bench): SitePoint => {
  const { width, height } = pad.getState() ?? { width: 0, height: 0 };
  return toSite(session.getState().view, { x: width / 2, y: height / 2 });
};

const systemOf = ({ site }: Bench) => current(site.getState().history).lengths.system;

/** The crosshair goes from line to line of the graph paper: what lies between them is in reach. */
const reachOf = (view: View, system: LengthSystem): Inches =>
  inches(Math.max(toGround(view, leastReach), partOfSquare * rulingFor(view.scale, system).fine));

/** An arrow moves what is selected, else the crosshair, a square of the graph paper at a time. */
const arrow = (bench: Bench, hand: KeyHand, deed: Extract<KeyDeed, { do: 'arrow' }>): void => {
  const { session, sender } = bench;
  const { tool, selection, view } = session.getState();
  const system = systemOf(bench);
  if (tool === 'select' && selection !== null) {
    const step = nudges[isMetric(system) ? 'metre' : 'foot'][deed.far ? 1 : 0];
    sender.send({ do: 'nudge', x: inches(deed.x * step), y: inches(deed.y * step) });
    return;
  }
  const { fine, heavy } = rulingFor(view.scale, system);
  const step = deed.far ? heavy : fine;
  const from = bench.pointer.getState() ?? sender.hand.getState().piece?.from ?? middleOfPad(bench);
  const onGrid = (value: number, by: number): number =>
    by === 0 ? value : Math.round(value / step + by) * step;
  const at = { x: onGrid(from.x, deed.x), y: onGrid(from.y, deed.y) };
  bench.pointer.setState(at, true);
  hand.setCross(at);
  sender.send({ do: 'move', at, reach: reachOf(view, system), free: false });
};

const place = (bench: Bench): void => {
  const { session, sender, pointer } = bench;
  const at = pointer.getState();
  if (at === null) return;
  const reach = reachOf(session.getState().view, systemOf(bench));
  const touch = { at, reach, free: false };
  sender.send({ do: 'press', ...touch });
  sender.send({ do: 'release', ...touch });
};

/** Whether a piece is being drawn or a figure is asked: what is typed then goes to that. */
const isTyped = ({ sender }: Bench): boolean => {
  const { piece, asked } = sender.hand.getState();
  return piece !== null || asked !== null;
};

/** Whether anything is begun that can be taken back step by step. */
const isBusy = (bench: Bench): boolean =>
  isTyped(bench) || bench.sender.hand.getState().steps !== null;

const leave = (bench: Bench, hand: KeyHand): void => {
  const { session, sender } = bench;
  const { tool, selection } = session.getState();
  const busy = isBusy(bench);
  sender.send({ do: 'leave' });
  hand.setCross(null);
  if (busy) return;
  if (tool !== 'select') session.setState({ tool: 'select' });
  else if (selection !== null) session.setState({ selection: null });
};

const carryOut = (bench: Bench, hand: KeyHand, deed: KeyDeed): void => {
  const { session, site, sender } = bench;
  const drawing = isBusy(bench);
  switch (deed.do) {
    case 'undo':
      return site.getState().undo();
    case 'redo':
      return site.getState().redo();
    case 'fit':
      return fitAll(bench);
    case 'zoom': {
      const { width, height } = bench.pad.getState() ?? { width: 0, height: 0 };
      const middle = { x: width / 2, y: height / 2 };
      return session.setState(({ view }) => ({ view: zoomAt(view, middle, deed.times) }));
    }
    case 'arrow':
      return arrow(bench, hand, deed);
    case 'tool':
      return session.setState({ tool: deed.tool });
    case 'type':
      return hand.onType(deed.sign);
    case 'place':
      return place(bench);
    case 'finish':
      return isTyped(bench) ? sender.send({ do: 'finish' }) : place(bench);
    case 'back':
      return sender.send({ do: drawing ? 'back' : 'erase' });
    case 'leave':
      return leave(bench, hand);
    case 'list':
      return hand.onList();
    case 'erase':
      return sender.send({ do: 'erase' });
  }
};

/** Whether a sheet lies over the yard: what is pressed is its own, also where nothing in it has the focus. */
const isCovered = (): boolean => document.querySelector('dialog:modal') !== null;

/** The keys of the yard, wherever the focus is, unless a field, a button or a sheet over it wants them. */
export const useYardKeys = (hand: KeyHand): void => {
  const bench = useBench();
  const latest = useLatest(hand);
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const pressed = pressedOf(event);
      if (event.altKey || isCovered()) return;
      if (belongsTo(event.target, pressed.key, pressed.command)) return;
      const drawing = isTyped(bench) ? 'a piece' : 'nothing';
      const deed = keyDeed(pressed, drawing, letters);
      if (deed === null) return;
      event.preventDefault();
      carryOut(bench, latest.current, deed);
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [bench, latest]);
};
