import { gateName, oneLine } from '../../engine/checks/names.ts';
import type { GateLayout, Layout, Leg } from '../../engine/layout.ts';
import { markName } from '../../engine/survey/markName.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import { trackAt } from '../../geometry/track.ts';
import { openingText } from '../../drawing/opening/openingText.ts';
import type { FenceLine } from '../../site/fenceLine.ts';
import type { Gate } from '../../site/gate.ts';
import { gatesOf } from '../../site/gatesOf.ts';
import type { GateId, LineId } from '../../site/ids.ts';
import { legsOf, type DrawnLeg } from '../../site/legsOf.ts';
import type { Site } from '../../site/site.ts';
import type { WallTop } from '../../site/wallTop.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { entriesOf } from '../entriesOf.ts';
import { pinGround } from '../pinGround.ts';
import type { ListRow } from './listRow.ts';
import { manyLegs, wayWords } from './rowWords.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

type Yard = Pick<Layout, 'lines' | 'posts' | 'gates'>;

type Opens = Gate['opens'];

/** How the leaves of a gate move, and to which side it opens; of one leaf and of more. */
const ways: Readonly<
  Record<Exclude<Gate['way']['kind'], 'gap'>, Readonly<Record<Opens, (count: number) => string>>>
> = {
  swing: {
    left: (count) =>
      count === 1
        ? phrase`1 leaf that swings, to the left`
        : phrase`${count} leaves that swing, to the left`,
    right: (count) =>
      count === 1
        ? phrase`1 leaf that swings, to the right`
        : phrase`${count} leaves that swing, to the right`,
  },
  'centre stop': {
    left: (count) => phrase`${count} leaves that swing to a stop in the middle, to the left`,
    right: (count) => phrase`${count} leaves that swing to a stop in the middle, to the right`,
  },
  cantilever: {
    left: (count) =>
      count === 1
        ? phrase`1 leaf that rolls, to the left`
        : phrase`${count} leaves that roll, to the left`,
    right: (count) =>
      count === 1
        ? phrase`1 leaf that rolls, to the right`
        : phrase`${count} leaves that roll, to the right`,
  },
};

const leavesWords = ({ way, leaves, opens }: Gate): string =>
  way.kind === 'gap'
    ? phrase`a gap that nothing closes`
    : ways[way.kind][opens](Object.keys(leaves).length);

/** From which mark a gate is measured, and how far it is to it. */
const anchorWords = (site: Site, { posts }: Yard, { anchor }: Gate, leg: DrawnLeg): string => {
  const far = formatLength(inches(Math.abs(anchor.offset)), site.lengths);
  if (anchor.from !== 'middle')
    return phrase`${far} from ${markName(site, posts, leg[anchor.from])}`;
  if (anchor.offset === 0) return phrase`in the middle of the leg`;
  const toward = markName(site, posts, anchor.offset < 0 ? leg.start : leg.end);
  return phrase`${far} from the middle of the leg towards ${toward}`;
};

const gateWords = (
  site: Site,
  layout: Yard,
  [id, gate]: readonly [GateId, Gate],
  leg: DrawnLeg,
): string => {
  const laid: GateLayout | undefined = layout.gates[id];
  const opening =
    laid === undefined ? [] : [phrase`opening ${openingText(laid.opening.target, site.lengths)}`];
  const misfit = laid?.placed === false ? [phrase`does not fit`] : [];
  const parts = [
    phrase`Gate ${gateName(site, id)}`,
    ...opening,
    leavesWords(gate),
    anchorWords(site, layout, gate, leg),
    ...misfit,
  ];
  return joined(parts, ', ');
};

const stepsWords = (steps: number): string =>
  steps === 1 ? phrase`in 1 step` : phrase`in ${steps} steps`;

const wallWords = ({ height, rise, steps }: WallTop, style: Site['lengths']): string => {
  const write = (length: number): string => formatLength(inches(length), style);
  if (rise === 0) return phrase`on a wall ${write(height)} high`;
  const low = write(height);
  const by = write(Math.abs(rise));
  const sloped =
    rise > 0
      ? phrase`on a wall ${low} high at its lower end, rising ${by}`
      : phrase`on a wall ${low} high at its lower end, falling ${by}`;
  return steps === 0 ? sloped : joined([sloped, stepsWords(steps)], ' ');
};

/** A leg as it is drawn and as it is laid out, and which of its line it is, from 1. */
interface NumberedLeg {
  readonly leg: DrawnLeg;
  readonly laid: Leg;
  readonly n: number;
}

const bowWords = (bow: number, style: Site['lengths']): string[] => {
  if (bow === 0) return [];
  const far = formatLength(inches(Math.abs(bow)), style);
  return [bow > 0 ? phrase`bowed ${far} to the left` : phrase`bowed ${far} to the right`];
};

const legWords = (
  site: Site,
  { posts }: Yard,
  { walls, stepped }: FenceLine,
  { leg, laid, n }: NumberedLeg,
): string => {
  const [from, to] = [markName(site, posts, leg.start), markName(site, posts, leg.end)];
  const wall = walls[leg.id];
  const parts = [
    phrase`Leg ${n}, ${from} to ${to}: ${formatLength(laid.length, site.lengths)}`,
    wayWords(laid.bearing),
    ...bowWords(laid.bow, site.lengths),
    ...(wall === undefined ? [] : [wallWords(wall, site.lengths)]),
    ...(stepped[leg.id] === undefined ? [] : [phrase`stepped`]),
  ];
  return joined(parts, ', ');
};

/** Posts that are held on a leg, and ground of it that is kept clear. */
const pinRows = (site: Site, { posts }: Yard, line: LineId, leg: DrawnLeg): ListRow[] =>
  entriesOf(site.pins).flatMap(([id, pin]): ListRow[] => {
    const ground = pinGround(site, pin);
    if (pin.line !== line || pin.leg !== leg.id || ground === null) return [];
    const from = markName(site, posts, leg.start);
    const place = phrase`${formatLength(ground.station, site.lengths)} from ${from}`;
    if (pin.holds.kind === 'post') {
      const post = posts.get(`post:${id}`);
      const words =
        post === undefined
          ? phrase`Held post that cannot stand there, ${place}`
          : phrase`Held post ${post.tag}, ${place}`;
      const selection = { kind: 'post', id: `post:${id}` } as const;
      return [{ key: id, words, selection, at: ground.at, rows: [] }];
    }
    const reach = formatLength(pin.holds.reach, site.lengths);
    const words = phrase`Ground kept clear, ${place}, ${reach} to each side`;
    return [{ key: id, words, selection: { kind: 'pin', id }, at: ground.at, rows: [] }];
  });

const legRow = (
  site: Site,
  layout: Yard,
  line: LineId,
  { leg, n }: Pick<NumberedLeg, 'leg' | 'n'>,
): ListRow[] => {
  const fence = site.lines[line];
  const laid = layout.lines[line]?.legs.find(({ id }) => id === leg.id);
  if (fence === undefined || laid === undefined) return [];
  const gates = gatesOf(site, line)
    .filter(([, gate]) => gate.leg === leg.id)
    .map(([id, gate]): ListRow => {
      const words = gateWords(site, layout, [id, gate], leg);
      const at = layout.gates[id]?.middle ?? null;
      return { key: id, words, selection: { kind: 'gate', id }, at, rows: [] };
    });
  return [
    {
      key: `${line} ${leg.id}`,
      words: legWords(site, layout, fence, { leg, laid, n }),
      selection: { kind: 'leg', line, id: leg.id },
      at: laid.bow === 0 ? midpoint(laid.start, laid.end) : trackAt(laid, laid.length / 2),
      rows: [...gates, ...pinRows(site, layout, line, leg)],
    },
  ];
};

/** What a list calls a fence line: by its own name, else by its number in the document. */
const lineWord = (id: LineId, { label }: FenceLine): string =>
  oneLine(label) === ''
    ? phrase`Fence line ${id.slice('line:'.length)}`
    : phrase`Fence line ${oneLine(label)}`;

/** How much fence it is, where it is laid out, and whether it comes back to its start. */
const fenceWords = (closed: boolean, long: string | null): string => {
  if (long === null) return closed ? phrase`closed fence` : phrase`open fence`;
  return closed ? phrase`${long} of closed fence` : phrase`${long} of open fence`;
};

/** Each fence line with its legs, and on these their gates, held posts and ground kept clear. */
export const lineRows = (site: Site, layout: Yard): ListRow[] =>
  entriesOf(site.lines).map(([id, line]) => {
    const laid = layout.lines[id];
    const legs = legsOf(line);
    const long = laid === undefined ? null : formatLength(laid.length, site.lengths);
    const fence = fenceWords(line.closed, long);
    return {
      key: id,
      words: phrase`${lineWord(id, line)}: ${fence}, ${manyLegs(legs.length)}`,
      selection: { kind: 'line', id },
      at: null,
      rows: legs.flatMap((leg, n) => legRow(site, layout, id, { leg, n: n + 1 })),
    };
  });
