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

/**
 * The layers of a site in a DXF, each with its colour; utilities have those of the APWA Uniform Color
 * Code, magenta for purple.
 */
export const dxfLayers = {
  FENCE: colours.black,
  POSTS: colours.black,
  'POST-TAGS': colours.black,
  HOLES: colours.grey,
  GATES: colours.cyan,
  'GATE-SWINGS': colours.grey,
  BOUNDARY: colours.magenta,
  BUILDING: colours.black,
  PAVING: colours.grey,
  POOL: colours.blue,
  'KEEP-OUT': colours.red,
  'SIGHT-TRIANGLE': colours.magenta,
  'FRONT-YARD': colours.magenta,
  'UTILITY-ELECTRIC': colours.red,
  'UTILITY-GAS': colours.yellow,
  'UTILITY-COMMUNICATION': colours.orange,
  'UTILITY-WATER': colours.blue,
  'UTILITY-RECLAIMED': colours.magenta,
  'UTILITY-SEWER': colours.green,
  TREES: colours.green,
  NOTES: colours.black,
  MARKS: colours.black,
  'GRADE-SHOTS': colours.grey,
} as const;

export type DxfLayer = keyof typeof dxfLayers;
export const dxfLayerNames = Object.keys(dxfLayers) as readonly DxfLayer[];
