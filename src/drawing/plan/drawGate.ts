import type { GateLayout } from '../../engine/layout.ts';
import { moved } from '../../geometry/moved.ts';
import { principalAngle } from '../../geometry/principalAngle.ts';
import type { Gate } from '../../site/gate.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import { openingText } from '../opening/openingText.ts';
import type { Primitive } from '../primitive.ts';

/** The leaves of a gate, open, and the ground they swing over. A gate that does not fit is a ghost. */
export const drawGate = ({ placed, leaves, start, end }: GateLayout): readonly Primitive[] => {
  const swings = leaves.flatMap(({ width, hinge, closed, open }): Primitive[] => [
    {
      kind: 'arc',
      centre: hinge,
      radius: width,
      start: closed,
      sweep: principalAngle(open - closed),
      pen: placed ? 'swing' : 'guide',
    },
    {
      kind: 'polyline',
      points: [hinge, moved(hinge, open, width)],
      closed: false,
      pen: placed ? 'leaf' : 'fence ghost',
    },
    {
      kind: 'polyline',
      points: [hinge, moved(hinge, closed, width)],
      closed: false,
      pen: placed ? 'swing' : 'guide',
    },
  ]);
  if (placed) return swings;
  return [...swings, { kind: 'polyline', points: [start, end], closed: false, pen: 'stop' }];
};

/** How deep into its swing the name of a gate stands, as a share of its widest leaf. */
const deep = 0.42;

/** What a gate is called and the clear opening to hold, in the ground that its leaves swing over. */
export const gateLabel = (
  layout: GateLayout,
  gate: Gate | undefined,
  style: LengthStyle,
): Primitive => {
  const { bearing, middle, leaves, placed, opening } = layout;
  const side = gate?.opens === 'right' ? -1 : 1;
  const widest = Math.max(0, ...leaves.map(({ width }) => width));
  const label = gate?.label.trim() ?? '';
  const held = `opening ${openingText(opening.target, style)}`;
  return {
    kind: 'text',
    at: moved(middle, radians(bearing + (side * Math.PI) / 2), widest * deep),
    text: `${label === '' ? 'Gate' : label}\n${placed ? held : 'does not fit here'}`,
    size: 0.15,
    rise: 0,
    angle: radians(0),
    ink: placed ? 'gate' : 'stop',
    weight: 'bold',
    far: 'rather',
  };
};
