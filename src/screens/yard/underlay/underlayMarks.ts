import type { Primitive } from '../../../drawing/primitive.ts';
import { turnKnob } from '../../../editor/turnKnob.ts';
import type { Underlay } from '../../../site/underlay.ts';
import { underlayGround } from '../../../site/underlayGround.ts';

/** What shows which picture is selected: its edge, and the knob that turns it while it is not locked. */
export const underlayMarks = (underlay: Underlay | undefined): readonly Primitive[] => {
  if (underlay === undefined) return [];
  const edge: Primitive = {
    kind: 'polyline',
    points: underlayGround(underlay),
    closed: true,
    pen: 'selected',
  };
  const knob = underlay.locked ? null : turnKnob(underlay);
  if (knob === null) return [edge];
  const disc = (least: number): Primitive => ({
    kind: 'circle',
    centre: knob.at,
    radius: 0,
    least,
    pen: 'selected',
    ink: 'paper',
  });
  return [edge, disc(0.12), disc(0.05)];
};
