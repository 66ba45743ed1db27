import { slack } from '../../geometry/tolerance.ts';
import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { toDegrees, radians } from '../../units/radians.ts';
import type { Carry } from '../carry/carry.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { bottomOf, leafRooms, type LeafRoom } from '../sweep/leafRooms.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

type Say = (length: number) => string;

const movedText = (laid: GateLayout, moved: number, say: Say): string =>
  laid.slides.length > 0
    ? phrase`${say(moved)} rolled`
    : `${toDegrees(radians(moved)).toFixed(1)}°`;

const leafName = ({ leaf }: LeafRoom, { leaves, slides }: GateLayout): string =>
  leaves.length + slides.length > 1 ? phrase`leaf ${leaf + 1}` : phrase`its leaf`;

/** What would mend a leaf that meets the ground, the least work first. */
const mends = (gate: Gate, room: LeafRoom, missing: number, say: Say): string => {
  const { otherWay } = room;
  const free = otherWay?.lowest ?? null;
  const other =
    free !== null && free.clearance >= -slack && otherWay?.unknown.length === 0
      ? [phrase`open it the other way, where ${say(Math.max(0, free.clearance))} is left`]
      : [];
  const low = Object.keys(gate.leaves).length === 1 ? [phrase`hinge it on the low side`] : [];
  const ways = [
    ...other,
    phrase`hang it ${say(missing)} higher, at ${say(bottomOf(gate) + missing)}`,
    phrase`cut the ground there by ${say(missing)}`,
    ...low,
  ];
  return joined(ways, phrase`; or `);
};

const roomFlags = (site: Site, gate: Gate, laid: GateLayout, room: LeafRoom): GateFlag[] => {
  const say: Say = (length) => formatLength(inches(length), fineStyle(site.lengths));
  const name = gateName(site, laid.id);
  const leaf = leafName(room, laid);
  const { lowest, unknown } = room;
  const outside: GateFlag[] =
    unknown.length === 0
      ? []
      : [
          {
            level: 'settle',
            rule: 'swing outside of the shots',
            message: phrase`${name}: ${leaf} moves over ground that no shots describe: expected shots all round its way.`,
          },
        ];
  if (lowest === null || lowest.clearance >= -slack) return outside;
  const missing = -lowest.clearance;
  const assumed = gate.bottom === null ? phrase` (assumed)` : '';
  const message = phrase`${name}: ${leaf}, hung ${say(bottomOf(gate))}${assumed} over its higher post, meets the ground at ${movedText(laid, lowest.moved, say)}, ${say(missing)} too low: ${mends(gate, room, missing, say)}.`;
  return [{ level: 'stop', rule: 'leaf meets the ground', message, at: lowest.at }, ...outside];
};

/** Leaves that meet the ground in their movement, and those over ground that nobody knows. */
export const checkLeafGround = (site: Site, laid: LaidLines, carry: Carry): Flag[] => {
  const rooms = carry.shelf<readonly LeafRoom[]>('rooms under leaves');
  const { ground } = laid;
  if (ground === null) return [];
  return Object.values(laid.gates).flatMap((each) => {
    const gate = site.gates[each.id];
    if (gate === undefined) return [];
    const under = rooms.take(each.id, [gate, each, ground], () => leafRooms(gate, each, ground));
    const flags = under.flatMap((room) => roomFlags(site, gate, each, room));
    return plantedAt(each, flags);
  });
};
