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
import { phrase } from '../../../phrases/phrase.ts';

type Say = (length: number) => string;

const halvesLine = ({ opening }: GateLayout, site: Site): string[] => {
  const halves = halvesOf(opening);
  if (halves === null) return [];
  const told = halves.map((half) => {
    const held = heldTexts(half, site.lengths);
    const range =
      held === null ? phrase`no width for sure` : phrase`from ${held.from} to ${held.to}`;
    return `${openingText(half.target, site.lengths)} (${range})`;
  });
  const [first = '', second = ''] = told;
  return [phrase`From each post to the face of the stop hold ${first} and ${second}.`];
};

const slideLine = ({ way }: Gate, { slides }: GateLayout, say: Say): string[] => {
  const [slide] = slides;
  if (way.kind !== 'cantilever' || slide === undefined) return [];
  const { overlap, counterbalance, rollers, behind } = way;
  const past = say(overlap + counterbalance);
  const reaches =
    slides.length > 1
      ? phrase`Closed, each leaf reaches ${past} past the face of its first roller post`
      : phrase`Closed, the leaf reaches ${past} past the face of the first roller post`;
  const parts = phrase`(overlap ${say(overlap)}, counterbalance ${say(counterbalance)}).`;
  const stands = phrase`Roller posts ${say(rollers)} apart, ${say(behind)} off the fence line.`;
  const aside = phrase`Rolled aside it takes ${say(slide.width)} along the fence.`;
  return [`${reaches} ${parts} ${stands} ${aside}`];
};

const passageLine = (gate: Gate, layout: GateLayout, say: Say): string[] =>
  layout.leaves.length === 0
    ? []
    : [phrase`Clear passage with the gate open: ${say(clearPassage(gate, layout).clear)}.`];

const receiverLine = (
  { receiver, bottom }: Gate,
  layout: GateLayout,
  style: LengthStyle,
): string[] => {
  if (receiver === null || layout.receiver === null) return [];
  const { depth, inside, rod } = receiver;
  const say: Say = (length) => formatLength(inches(length), fineStyle(style));
  const reach = bottom === null ? null : rodReach(receiver, bottom);
  const goes = reach === null || reach <= 0 ? '' : phrase` The rod goes in ${say(reach)} at most.`;
  return [
    phrase`Receiver: ${receiverText(receiver)}, ${pipeSize(inside, style)} inside for a rod of ${say(rod)}, ${say(depth)} deep.${goes}`,
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
