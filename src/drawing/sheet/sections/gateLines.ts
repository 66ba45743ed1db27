import { clearPassage } from '../../../engine/gate/clearPassage.ts';
import { halvesOf } from '../../../engine/gate/halvesOf.ts';
import { rodReach } from '../../../engine/gate/rodReach.ts';
import type { GateLayout } from '../../../engine/layout.ts';
import type { Gate } from '../../../site/gate.ts';
import type { Site } from '../../../site/site.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { heldTexts } from '../../opening/heldTexts.ts';
import { openingText } from '../../opening/openingText.ts';
import { pipeSize } from '../../../units/pipeSize.ts';
import { receiverText } from '../../tables/receiverText.ts';

type Say = (length: number) => string;

const halvesLine = ({ opening }: GateLayout, site: Site): string[] => {
  const halves = halvesOf(opening);
  if (halves === null) return [];
  const told = halves.map((half) => {
    const held = heldTexts(half, site.lengths);
    const range = held === null ? 'no width for sure' : `from ${held.from} to ${held.to}`;
    return `${openingText(half.target, site.lengths)} (${range})`;
  });
  return [`From each post to the face of the stop hold ${told.join(' and ')}.`];
};

const slideLine = ({ way }: Gate, { slides }: GateLayout, say: Say): string[] => {
  const [slide] = slides;
  const leaf = slides.length > 1 ? 'each leaf' : 'the leaf';
  const first = slides.length > 1 ? 'its first roller post' : 'the first roller post';
  if (way.kind !== 'cantilever' || slide === undefined) return [];
  const { overlap, counterbalance, rollers, behind } = way;
  return [
    `Closed, ${leaf} reaches ${say(overlap + counterbalance)} past the face of ${first} (overlap ${say(overlap)}, counterbalance ${say(counterbalance)}). Roller posts ${say(rollers)} apart, ${say(behind)} off the fence line. Rolled aside it takes ${say(slide.width)} along the fence.`,
  ];
};

const passageLine = (gate: Gate, layout: GateLayout, say: Say): string[] =>
  layout.leaves.length === 0
    ? []
    : [`Clear passage with the gate open: ${say(clearPassage(gate, layout).clear)}.`];

const receiverLine = (
  { receiver, bottom }: Gate,
  layout: GateLayout,
  style: LengthStyle,
): string[] => {
  if (receiver === null || layout.receiver === null) return [];
  const { depth, inside, rod } = receiver;
  const say: Say = (length) => formatLength(inches(length), fineStyle(style));
  const reach = bottom === null ? null : rodReach(receiver, bottom);
  const goes = reach === null || reach <= 0 ? '' : ` The rod goes in ${say(reach)} at most.`;
  return [
    `Receiver: ${receiverText(receiver)}, ${pipeSize(inside, style)} inside for a rod of ${say(rod)}, ${say(depth)} deep.${goes}`,
  ];
};

/**
 * What the detail of a gate says beside its bar and working, a sentence or two each: its halves,
 * how it rolls, the clear passage and its receiver.
 */
export const gateLines = (layout: GateLayout, site: Site): readonly string[] => {
  const gate = site.gates[layout.id];
  if (gate === undefined) return [];
  const say: Say = (length) => formatLength(inches(length), fineStyle(site.lengths));
  return [
    ...halvesLine(layout, site),
    ...slideLine(gate, layout, say),
    ...passageLine(gate, layout, say),
    ...receiverLine(gate, layout, site.lengths),
  ];
};
