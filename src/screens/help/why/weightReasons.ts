import type { GateLayout, Layout } from '../../../engine/layout.ts';
import { leafHangings } from '../../../engine/structure/leafHangings.ts';
import { joined, phrase } from '../../../phrases/phrase.ts';
import type { Site } from '../../../site/site.ts';
import { frameRule } from '../../../trade/gateFrames.ts';
import { pipeWeightSource } from '../../../trade/pipeWeight.ts';
import { bendingSource } from '../../../trade/windTerms.ts';
import { practice, type Reason } from './reason.ts';

/** Why the leaves of a gate weigh what they do and bend their posts so far: their parts, and by what each is reckoned. */
export const weightReasons = (
  gate: GateLayout,
  site: Site,
  { posts }: Pick<Layout, 'posts'>,
): readonly Reason[] => {
  const [first] = leafHangings(site, gate, posts);
  if (first === undefined) return [];
  const parts = joined(
    first.weight.map(({ label, pounds }) => phrase`${label} ${Math.round(pounds)} lb`),
    ', ',
  );
  const unsaid = Object.values(site.gates[gate.id]?.leaves ?? {}).some(
    ({ frame }) => frame === null,
  );
  return [
    { says: phrase`A leaf weighs what its parts do: ${parts}.`, source: pipeWeightSource.text },
    ...(unsaid
      ? [
          {
            says: phrase`Of a frame that nobody has said the usual one is taken.`,
            source: frameRule.text,
          },
        ]
      : []),
    {
      says: phrase`It pulls at the upper hinge and pushes at the lower one; what the pipe of the post may bear of that is ${Math.round(first.capacity / 12)} ft-lb.`,
      source: bendingSource.text,
    },
    {
      says: phrase`How far the latch side comes down is by the bending of the post alone: hinges and ground give more.`,
      source: practice,
    },
  ];
};
