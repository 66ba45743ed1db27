import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { leastClearWidth } from '../../trade/clearWidth.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatAngle } from '../../units/formatAngle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { radians } from '../../units/radians.ts';
import { clearPassage } from '../gate/clearPassage.ts';
import type { Carry, Shelf } from '../carry/carry.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout } from '../layout.ts';
import type { LaidYard } from './laidYard.ts';
import { freeSwings } from '../sweep/mayOpen.ts';
import {
  aroundGate,
  besideGate,
  meetings,
  type Meeting,
  type Surroundings,
} from '../sweep/meetings.ts';
import { isSolid, type Met } from '../sweep/obstacle.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { metName } from './metName.ts';
import { gateName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

const rules: Readonly<Record<Met['kind'], string>> = {
  building: 'leaf meets something',
  tree: 'leaf meets something',
  fence: 'leaf meets something',
  gate: 'leaves meet',
  boundary: 'leaf over the boundary',
  pool: 'leaf over the pool edge',
  paving: 'leaf over a paving edge',
};

const otherSide = { left: 'right', right: 'left' } as const;

/** Whether the gate would be free to open as far to its other side. */
const otherWay = (gate: GateLayout, { opens }: Gate, around: Surroundings): string => {
  const side = otherSide[opens];
  const { free, over } = freeSwings(gate, around)[side];
  const bounds = over === null ? '' : phrase`, over the boundary`;
  return side === 'left'
    ? phrase`to the left it is free for ${formatAngle(free)}${bounds}`
    : phrase`to the right it is free for ${formatAngle(free)}${bounds}`;
};

/** What there is to say of one meeting, after the name of the gate and the leaf. */
const told = (meeting: Meeting, planned: string, other: () => string): string => {
  const turned = formatAngle(meeting.turned);
  switch (meeting.met.kind) {
    case 'building':
    case 'tree':
    case 'fence':
      return phrase`at ${turned}: expected it free up to ${planned}; ${other()}.`;
    case 'gate':
      return phrase`from ${turned} on: open one at a time, or hang one the other way.`;
    case 'boundary':
      return phrase`from ${turned} on: expected it to stay on the property; ${other()}.`;
    case 'pool':
      return phrase`edge from ${turned} on: keep the swing clear of the water.`;
    case 'paving':
      return phrase`edge at ${turned}: see that its bottom clears the ground on both sides.`;
  }
};

const verb: Readonly<Record<Met['kind'], string>> = {
  building: phrase`meets`,
  tree: phrase`meets`,
  fence: phrase`meets`,
  gate: phrase`can meet`,
  boundary: phrase`swings over`,
  pool: phrase`swings over`,
  paving: phrase`swings over`,
};

const levelOf = ({ met }: Meeting): Flag['level'] =>
  isSolid({ met }) && met.kind !== 'gate' ? 'stop' : 'caution';

/** The first of each message: fence of several runs is one thing to meet. */
const once = (flags: readonly GateFlag[]): GateFlag[] =>
  flags.filter(({ message }, n) => flags.findIndex((one) => one.message === message) === n);

const sweepFlags = (
  gate: GateLayout,
  site: Site,
  around: Surroundings,
  known: Shelf<readonly Meeting[]>,
): GateFlag[] => {
  const own = site.gates[gate.id];
  const [first] = gate.leaves;
  if (own === undefined || first === undefined) return [];
  const planned = formatAngle(radians(Math.abs(first.turns)));
  const found = known.take(gate.id, besideGate(around, gate), () =>
    meetings(gate.leaves, aroundGate(around, gate)),
  );
  return once(
    found
      .filter(({ met }) => met.kind !== 'gate' || gate.id < met.id)
      // who has said how high the leaves hang has looked at the ground under them
      .filter(({ met }) => met.kind !== 'paving' || own.bottom === null)
      .map((meeting): GateFlag => {
        const { met, leaf, at } = meeting;
        const which = gate.leaves.length > 1 ? phrase`leaf ${leaf + 1}` : phrase`the leaf`;
        const says = told(meeting, planned, () => otherWay(gate, own, around));
        const message = phrase`${gateName(site, gate.id)}: ${which} ${verb[met.kind]} ${metName(site, met)} ${says}`;
        return { level: levelOf(meeting), rule: rules[met.kind], at, message };
      }),
  );
};

/** A walk gate that leaves less to pass through than an accessible route wants. */
const narrow = (gate: GateLayout, site: Site): GateFlag[] => {
  const own = site.gates[gate.id];
  // what has to pass by wheelchair is told with its route
  if (own === undefined || own.route === 'accessible' || gate.leaves.length !== 1) return [];
  const { clear } = clearPassage(own, gate);
  if (clear >= leastClearWidth.width) return [];
  const [left, least] = [clear, leastClearWidth.width].map((width) =>
    formatLength(width, fineStyle(site.lengths)),
  );
  const message = phrase`${gateName(site, gate.id)}: with its leaf at 90° the clear passage is ${left ?? ''}: on an accessible route expected at least ${least ?? ''}.`;
  return [{ level: 'caution', rule: 'narrow passage', message }];
};

/**
 * What the leaves of placed gates meet as they open: walls, trunks and other fence stop them; a
 * boundary, a pool, an edge of paving and the leaves of another gate are to be known.
 */
export const checkSweeps = (site: Site, laid: LaidYard, carry: Carry): Flag[] => {
  const gates = Object.values(laid.gates).filter(({ placed }) => placed);
  if (gates.every(({ leaves }) => leaves.length === 0)) return [];
  const around = laid.around();
  const known = carry.shelf<readonly Meeting[]>('what leaves meet');
  return gates.flatMap((gate) =>
    plantedAt(gate, [...sweepFlags(gate, site, around, known), ...narrow(gate, site)]),
  );
};
