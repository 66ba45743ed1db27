import type { Gate } from '../../site/gate.ts';
import { leavesOf } from '../gate/termsOf.ts';
import { phrase } from '../../phrases/phrase.ts';

type End = 'start' | 'end';

/** The post on which a single leaf hangs or rolls; of two leaves that of the first. */
export const hungEnd = (gate: Gate): End => {
  if (leavesOf(gate).length > 1) return 'start';
  return gate.way.kind === 'cantilever' ? gate.way.stores : gate.hingedAt;
};

/** What a crew calls the gate post at an end of the leg: by what it carries. */
export const postName = (gate: Gate, end: End): string => {
  if (leavesOf(gate).length > 1) return phrase`the post of leaf ${end === 'start' ? 1 : 2}`;
  if (end !== hungEnd(gate)) return phrase`the latch post`;
  return gate.way.kind === 'cantilever' ? phrase`the roller post` : phrase`the hinge post`;
};
