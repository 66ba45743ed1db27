import type { Gate } from '../../site/gate.ts';
import type { Receiver } from '../../site/receiver.ts';
import type { Site } from '../../site/site.ts';
import { receiverDepth } from '../../trade/receivers.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import { rodReach } from '../gate/rodReach.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { gateName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A rod that goes in less than this holds little, inches (common practice, no published source). */
const leastReach = 2;
/** Play of a rod in its receiver from which leaves rattle, inches (common practice, no published source). */
const mostPlay = 0.75;

type Say = (length: number) => string;

const sized = ({ inside, rod }: Receiver, name: string, say: Say): GateFlag[] => {
  if (inside <= rod) {
    const message = phrase`${name}: a rod of ${say(rod)} does not go into a receiver of ${say(inside)} inside: expected the inside wider than the rod; conduit is measured inside.`;
    return [{ level: 'stop', rule: 'rod wider than its receiver', message }];
  }
  if (inside - rod <= mostPlay) return [];
  const message = phrase`${name}: a rod of ${say(rod)} has ${say(inside - rod)} of play in a receiver of ${say(inside)} inside: expected ${say(mostPlay)} at most.`;
  return [{ level: 'settle', rule: 'rod loose in its receiver', message }];
};

const deep = ({ depth, ground }: Receiver, name: string, say: Say): GateFlag[] => {
  const least = ground === 'loose soil' ? receiverDepth.most : receiverDepth.least;
  if (depth >= least) return [];
  const message = phrase`${name}: receiver ${say(depth)} deep in ${ground}: expected ${say(least)} (${receiverDepth.source.text}).`;
  return [{ level: 'settle', rule: 'receiver not deep enough', message }];
};

const lifted = (receiver: Receiver, bottom: Inches | null, name: string, say: Say): GateFlag[] => {
  if (bottom === null) {
    const message = phrase`${name}: nobody has said how high its leaves hang: the rod rises ${say(receiver.lift)}, expected that to clear the ground as the leaves do.`;
    return [{ level: 'settle', rule: 'leaf bottom not said', message }];
  }
  const reach = rodReach(receiver, bottom);
  if (reach >= leastReach) return [];
  const message = phrase`${name}: a rod that rises ${say(receiver.lift)} and is to clear the ground as its leaves do, by ${say(bottom)}, goes ${say(Math.max(0, reach))} into its receiver: expected ${say(leastReach)}.`;
  return [{ level: 'settle', rule: 'rod hardly goes in', message }];
};

const notSaid = (site: Site, gate: Gate, name: string): GateFlag[] => {
  const latch = gate.latch === null ? undefined : site.hardware[gate.latch];
  if (latch?.kind !== 'drop rod') return [];
  const message = phrase`${name}: nobody has said what its drop rod goes into: expected a receiver for the ground at the meeting edge.`;
  return [{ level: 'settle', rule: 'receiver not said', message }];
};

/** What there is to say about drop rods and what they drop into, of pairs of leaves that turn. */
export const checkReceivers = (site: Site, laid: LaidLines): Flag[] =>
  Object.values(laid.gates).flatMap((layout) => {
    const gate = site.gates[layout.id];
    if (!layout.placed || gate?.way.kind !== 'swing' || layout.leaves.length !== 2) return [];
    const name = gateName(site, layout.id);
    const { receiver, bottom } = gate;
    if (receiver === null) return plantedAt(layout, notSaid(site, gate, name));
    const say: Say = (length) => formatLength(inches(length), fineStyle(site.lengths));
    const at = layout.receiver?.at ?? layout.middle;
    const flags = [
      ...sized(receiver, name, say),
      ...deep(receiver, name, say),
      ...lifted(receiver, bottom, name, say),
    ];
    return plantedAt(
      layout,
      flags.map((flag) => ({ ...flag, at })),
    );
  });
