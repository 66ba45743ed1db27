import type { Ink } from '../../drawing/ink.ts';
import type { PenName } from '../../drawing/pens.ts';
import type { Primitive } from '../../drawing/primitive.ts';
import type { Flag } from '../../engine/flag.ts';
import type { GateLayout } from '../../engine/layout.ts';
import type { Post } from '../../engine/post.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { GateId } from '../../site/ids.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { plannedGate } from '../plannedGate.ts';
import { pointerOf } from '../pointer.ts';
import type { Desk, Tool } from '../tool.ts';
import { unmeasured } from '../unmeasured.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 *   idle --move near fence--> aiming --move--> aiming --press--> idle
 *   aiming --move away, leave--> idle
 *
 * While aiming, the gate stands in the draft under `ghost`: the engine lays it out like any other.
 */
export type PlaceGateState =
  { readonly is: 'idle' } | { readonly is: 'aiming'; readonly ghost: GateId };

const idle: PlaceGateState = { is: 'idle' };

/** Why the gate cannot be built where it is, as the engine says it; null when it can. */
const refusal = (id: GateId, { layout }: Desk): Flag | null =>
  layout.flags.find(
    ({ level, place }) => level === 'stop' && place.kind === 'gate' && place.id === id,
  ) ?? null;

interface Look {
  readonly pen: PenName;
  readonly ink: Ink;
}

/** The circles of a post: its true outside diameter, and the hole if the engine gave it one. */
const post = (at: SitePoint, set: Post | undefined, od: number, { pen, ink }: Look) => {
  const circle = (diameter: number, filled: Ink | null): Primitive => ({
    kind: 'circle',
    centre: at,
    radius: diameter / 2,
    least: 0,
    pen,
    ink: filled,
  });
  const hole = set === undefined ? [] : [circle(set.hole.diameter, null)];
  return [...hole, circle(set?.od ?? od, ink)];
};

/** The gate's posts and opening line; its name and opening are lettered by the plan, as the draft has it. */
const ghost = (gate: GateLayout, desk: Desk): Primitive[] => {
  const stop = refusal(gate.id, desk) !== null || !gate.placed;
  const look: Look = stop ? { pen: 'stop', ink: 'stop' } : { pen: 'ghost', ink: 'ghost' };
  const { site, layout } = desk;
  const line = site.lines[gate.line];
  const od = (site.gates[gate.id]?.post ?? (line && site.specs[line.spec]?.gatePost))?.od ?? 0;
  return [
    { kind: 'polyline', points: [gate.start, gate.end], closed: false, pen: look.pen },
    ...post(gate.start, gate.posts ? layout.posts.get(gate.posts.start) : undefined, od, look),
    ...post(gate.end, gate.posts ? layout.posts.get(gate.posts.end) : undefined, od, look),
  ];
};

/** Places the gate that the session plans on the fence that the hand is near. */
export const placeGate: Tool<PlaceGateState> = {
  idle,
  on: (state, input, { site, plans }) => {
    if (input.do === 'leave') return { state: idle, draft: null };
    const pointer = pointerOf(input, null);
    if (pointer === null || input.do === 'release') return { state };
    const planned = plannedGate(site, plans.gate, pointer);
    if (planned === null) {
      const say = phrase`No fence here: tap on the leg that the gate goes into`;
      return { state: idle, draft: null, ...(input.do === 'press' && { say }) };
    }
    if (input.do === 'move') {
      return { state: { is: 'aiming', ghost: planned.id }, draft: planned.site };
    }
    return {
      state: idle,
      commit: { site: planned.site, label: phrase`Place gate` },
      select: { kind: 'gate', id: planned.id },
      plans: { ...plans, gate: unmeasured(plans.gate) },
    };
  },
  preview: (state, desk) => {
    const gate = state.is === 'aiming' ? desk.layout.gates[state.ghost] : undefined;
    return gate === undefined ? [] : ghost(gate, desk);
  },
  prompt: (state, desk) => {
    if (state.is === 'idle') return phrase`Point at the leg that the gate goes into`;
    const opening = desk.layout.gates[state.ghost]?.opening.target;
    const why = refusal(state.ghost, desk);
    if (why !== null) return why.message;
    if (opening === undefined) return phrase`Tap to set the gate`;
    return phrase`Opening ${formatLength(opening, fineStyle(desk.site.lengths))}: tap to set the gate`;
  },
  rest: () => idle,
};
