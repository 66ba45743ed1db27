import type { Layout } from '../../engine/layout.ts';
import { leafRooms } from '../../engine/sweep/leafRooms.ts';
import type { GateId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';
import { phrase } from '../../phrases/phrase.ts';

const roomText = (room: Inches, site: Site): string => {
  const style = fineStyle(site.lengths);
  return room < 0
    ? phrase`${formatLength(inches(-room), style)} too low`
    : phrase`${formatLength(room, style)} left`;
};

const drawRooms = (id: GateId, site: Site, { gates, ground }: Layout): Primitive[] => {
  const [gate, laid] = [site.gates[id], gates[id]];
  if (gate === undefined || laid === undefined || ground === null) return [];
  return leafRooms(gate, laid, ground).flatMap(({ lowest }): Primitive[] =>
    lowest === null
      ? []
      : [
          { kind: 'sign', sign: 'low', at: lowest.at, off: 0 },
          {
            kind: 'text',
            at: lowest.at,
            text: roomText(lowest.clearance, site),
            size: 0.141,
            rise: 0.11,
            angle: radians(0),
            ink: 'leaf',
            weight: 'regular',
          },
        ],
  );
};

/**
 * Where each leaf comes nearest to known ground through its whole movement, and the room that is
 * left there, or by how much it hangs too low. Nothing where the ground is not known.
 */
export const drawLeafRooms = (site: Site, layout: Layout): readonly Primitive[] =>
  layout.ground === null
    ? []
    : (Object.keys(layout.gates) as GateId[]).flatMap((id) => drawRooms(id, site, layout));
