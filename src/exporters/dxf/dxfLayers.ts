import type { DxfLineType } from './dxfLineTypes.ts';

/** Numbers of colours of the public DXF reference: 1 red to 6 magenta, 7 black on white, 8 grey, 30 orange. */
const colours = {
  red: 1,
  yellow: 2,
  green: 3,
  cyan: 4,
  blue: 5,
  magenta: 6,
  black: 7,
  grey: 8,
  orange: 30,
} as const;

/** How a layer is drawn: the number of its colour and its line type. */
interface DxfLook {
  readonly colour: number;
  readonly line: DxfLineType | 'Continuous';
}

const plain = (colour: keyof typeof colours): DxfLook => ({
  colour: colours[colour],
  line: 'Continuous',
});

const dashed = (colour: keyof typeof colours, line: DxfLineType): DxfLook => ({
  colour: colours[colour],
  line,
});

/**
 * The layers of a site in a DXF, each with its look; utilities have the colours of the APWA Uniform Color
 * Code, magenta for purple.
 */
export const dxfLayers = {
  'FENCE-BAYS': dashed('black', 'FENCE'),
  'FENCE-LINE': dashed('grey', 'ALONG'),
  POSTS: plain('black'),
  'POST-TAGS': plain('black'),
  HOLES: plain('grey'),
  GATES: plain('cyan'),
  'GATE-SWINGS': dashed('grey', 'HIDDEN'),
  DIMENSIONS: plain('grey'),
  BOUNDARY: dashed('magenta', 'BOUNDARY'),
  BUILDING: plain('black'),
  WALLS: plain('black'),
  PAVING: plain('grey'),
  POOL: plain('blue'),
  'KEEP-OUT': dashed('red', 'CLOSED'),
  'SIGHT-TRIANGLE': dashed('magenta', 'ZONE'),
  'FRONT-YARD': dashed('magenta', 'ZONE'),
  'UTILITY-ELECTRIC': dashed('red', 'UTILITY'),
  'UTILITY-GAS': dashed('yellow', 'UTILITY'),
  'UTILITY-COMMUNICATION': dashed('orange', 'UTILITY'),
  'UTILITY-WATER': dashed('blue', 'UTILITY'),
  'UTILITY-RECLAIMED': dashed('magenta', 'UTILITY'),
  'UTILITY-SEWER': dashed('green', 'UTILITY'),
  TREES: plain('green'),
  NOTES: plain('black'),
  MARKS: plain('black'),
  'GRADE-SHOTS': plain('grey'),
} as const satisfies Record<string, DxfLook>;

export type DxfLayer = keyof typeof dxfLayers;
export const dxfLayerNames = Object.keys(dxfLayers) as readonly DxfLayer[];
