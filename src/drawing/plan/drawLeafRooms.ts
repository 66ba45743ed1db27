import type { Ground } from '../../engine/ground/groundOf.ts';
import type { GateLayout, Layout } from '../../engine/layout.ts';
import { leafRooms } from '../../engine/sweep/leafRooms.ts';
import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';
import { phrase } from '../../phrases/phrase.ts';

const roomText = (room: Inches, lengths: LengthStyle): string => {
  const style = fineStyle(lengths);
  return room < 0
    ? phrase`${formatLength(inches(-room), style)} too low`
    : phrase`${formatLength(room, style)} left`;
};

/**
 * Where each leaf of a gate comes nearest to known ground through its whole movement, and the room that is
 * left there, or by how much it hangs too low.
 */
export const drawRoomsOf = (
  gate: Gate,
  laid: GateLayout,
  { ground, style }: { readonly ground: Ground; readonly style: LengthStyle },
): readonly Primitive[] =>
  leafRooms(gate, laid, ground).flatMap(({ lowest }): Primitive[] =>
    lowest === null
      ? []
      : [
          { kind: 'sign', sign: 'low', at: lowest.at, off: 0 },
          {
            kind: 'text',
            at: lowest.at,
            text: roomText(lowest.clearance, style),
            size: 0.141,
            rise: 0.11,
            angle: radians(0),
            ink: 'leaf',
            weight: 'regular',
          },
        ],
  );

/** The same of every gate of a site. Nothing where the ground is not known. */
export const drawLeafRooms = (site: Site, { gates, ground }: Layout): readonly Primitive[] =>
  ground === null
    ? []
    : Object.values<GateLayout>(gates).flatMap((laid) => {
        const gate = site.gates[laid.id];
        return gate === undefined ? [] : drawRoomsOf(gate, laid, { ground, style: site.lengths });
      });
