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
import { capital, many, wayWords } from './rowWords.ts';

type Yard = Pick<Layout, 'lines' | 'posts' | 'gates'>;

const ways = {
  swing: 'swings',
  'centre stop': 'swing to a stop in the middle',
  cantilever: 'rolls',
  gap: 'a gap that nothing closes',
} as const satisfies Readonly<Record<Gate['way']['kind'], string>>;

const leavesWords = ({ way, leaves, opens }: Gate): string => {
  const count = Object.keys(leaves).length;
  if (way.kind === 'gap') return ways.gap;
  const [noun, verb] = [count === 1 ? '1 leaf' : `${count} leaves`, ways[way.kind]];
  const does = count === 1 ? verb : verb.replace(/s$/, '');
  return `${noun} that ${does}, to the ${opens}`;
};

/** From which mark a gate is measured, and how far it is to it. */
const anchorWords = (site: Site, { posts }: Yard, { anchor }: Gate, leg: DrawnLeg): string => {
  const far = formatLength(inches(Math.abs(anchor.offset)), site.lengths);
  if (anchor.from !== 'middle') return `${far} from ${markName(site, posts, leg[anchor.from])}`;
  if (anchor.offset === 0) return 'in the middle of the leg';
  const toward = markName(site, posts, anchor.offset < 0 ? leg.start : leg.end);
  return `${far} from the middle of the leg towards ${toward}`;
};

const gateWords = (
  site: Site,
  layout: Yard,
  [id, gate]: readonly [GateId, Gate],
  leg: DrawnLeg,
): string => {
  const laid: GateLayout | undefined = layout.gates[id];
  const opening =
    laid === undefined ? [] : [`opening ${openingText(laid.opening.target, site.lengths)}`];
  const misfit = laid?.placed === false ? ['does not fit'] : [];
  return [
    `Gate ${gateName(site, id)}`,
    ...opening,
    leavesWords(gate),
    anchorWords(site, layout, gate, leg),
    ...misfit,
  ].join(', ');
};

const wallWords = ({ height, rise, steps }: WallTop, style: Site['lengths']): string => {
  const write = (length: number): string => formatLength(inches(length), style);
  if (rise === 0) return `on a wall ${write(height)} high`;
  const low = `on a wall ${write(height)} high at its lower end`;
  const by = `${rise > 0 ? 'rising' : 'falling'} ${write(Math.abs(rise))}`;
  return `${low}, ${by}${steps === 0 ? '' : ` in ${many(steps, 'step')}`}`;
};

/** A leg as it is drawn and as it is laid out, and which of its line it is, from 1. */
interface NumberedLeg {
  readonly leg: DrawnLeg;
  readonly laid: Leg;
  readonly n: number;
}

const legWords = (
  site: Site,
  { posts }: Yard,
  { walls, stepped }: FenceLine,
  { leg, laid, n }: NumberedLeg,
): string => {
  const [from, to] = [leg.start, leg.end].map((id) => markName(site, posts, id));
  const bow = Math.abs(laid.bow);
  const side = laid.bow > 0 ? 'left' : 'right';
  const wall = walls[leg.id];
  return [
    `Leg ${n}, ${from} to ${to}: ${formatLength(laid.length, site.lengths)}`,
    wayWords(laid.bearing),
    ...(bow === 0 ? [] : [`bowed ${formatLength(inches(bow), site.lengths)} to the ${side}`]),
    ...(wall === undefined ? [] : [wallWords(wall, site.lengths)]),
    ...(stepped[leg.id] === undefined ? [] : ['stepped']),
  ].join(', ');
};

/** Posts that are held on a leg, and ground of it that is kept clear. */
const pinRows = (site: Site, { posts }: Yard, line: LineId, leg: DrawnLeg): ListRow[] =>
  entriesOf(site.pins).flatMap(([id, pin]): ListRow[] => {
    const ground = pinGround(site, pin);
    if (pin.line !== line || pin.leg !== leg.id || ground === null) return [];
    const from = markName(site, posts, leg.start);
    const place = `${formatLength(ground.station, site.lengths)} from ${from}`;
    if (pin.holds.kind === 'post') {
      const post = posts[`post:${id}`];
      const name = post === undefined ? 'that cannot stand there' : post.tag;
      const selection = { kind: 'post', id: `post:${id}` } as const;
      return [
        { key: id, words: `Held post ${name}, ${place}`, selection, at: ground.at, rows: [] },
      ];
    }
    const reach = formatLength(pin.holds.reach, site.lengths);
    const words = `Ground kept clear, ${place}, ${reach} to each side`;
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
  oneLine(label) === '' ? `Fence ${id.replace(':', ' ')}` : `Fence line ${oneLine(label)}`;

/** Each fence line with its legs, and on these their gates, held posts and ground kept clear. */
export const lineRows = (site: Site, layout: Yard): ListRow[] =>
  entriesOf(site.lines).map(([id, line]) => {
    const laid = layout.lines[id];
    const legs = legsOf(line);
    const long = laid === undefined ? '' : `${formatLength(laid.length, site.lengths)} of `;
    return {
      key: id,
      words: capital(
        `${lineWord(id, line)}: ${long}${line.closed ? 'closed' : 'open'} fence, ${many(legs.length, 'leg')}`,
      ),
      selection: { kind: 'line', id },
      at: null,
      rows: legs.flatMap((leg, n) => legRow(site, layout, id, { leg, n: n + 1 })),
    };
  });
