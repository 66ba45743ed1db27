import { isPlain } from './isPlain.ts';

/** A document of some version as it was read: named fields, nothing known of them. */
export type PlainDocument = Readonly<Record<string, unknown>>;

/** From the version that a step is filed under to the next one. */
export type Upgrades = Readonly<Record<number, (document: PlainDocument) => PlainDocument>>;

/** Every entry of a map taken one step; what is no map or entry stays for the schema to refuse. */
const mapped = (map: unknown, step: (entry: PlainDocument) => PlainDocument): unknown =>
  isPlain(map)
    ? Object.fromEntries(
        Object.entries(map).map(([id, entry]) => [id, isPlain(entry) ? step(entry) : entry]),
      )
    : map;

const leafOfTwo = ({ width, ...leaf }: PlainDocument): PlainDocument => ({
  ...leaf,
  widths: { top: width, middle: null, bottom: null },
  height: null,
  frame: null,
  on: '',
});

const gateOfTwo = (gate: PlainDocument): PlainDocument => ({
  ...gate,
  way: { kind: 'swing', turns: Math.PI / 2 },
  leaves: mapped(gate['leaves'], leafOfTwo),
  bottom: null,
  closer: null,
  holdOpen: false,
  receiver: null,
  signed: null,
  asSet: null,
});

const partOfTwo = (part: PlainDocument): PlainDocument => ({
  ...part,
  spread: 'uncertain',
  on: '',
  readings: [],
  fits: { post: null, frame: null },
  pin: null,
});

/** Leaves measured at three heights, parts with what they fit, ways to close an opening. */
const fromOne = (document: PlainDocument): PlainDocument => ({
  ...document,
  shop: { leafStep: 1 / 8 },
  gates: mapped(document['gates'], gateOfTwo),
  hardware: mapped(document['hardware'], partOfTwo),
});

const specOfThree = (spec: PlainDocument): PlainDocument => ({
  ...spec,
  pullInterval: null,
  pullGrade: null,
  gapUnder: 2,
});

const lineOfThree = (line: PlainDocument): PlainDocument => ({
  ...line,
  stepped: {},
  follows: null,
});

const featureOfThree = (feature: PlainDocument): PlainDocument =>
  feature['kind'] === 'boundary' ? { ...feature, setback: 0 } : feature;

/** Posts held by hand, ground kept clear, grade shots, and pull posts, which no older file asked for. */
const fromTwo = (document: PlainDocument): PlainDocument => ({
  ...document,
  pins: {},
  shots: {},
  lines: mapped(document['lines'], lineOfThree),
  features: mapped(document['features'], featureOfThree),
  specs: mapped(document['specs'], specOfThree),
});

const specOfFour = (spec: PlainDocument): PlainDocument => ({
  ...spec,
  onCurves: 'by radius',
  foundationToe: null,
});

const lineOfFour = (line: PlainDocument): PlainDocument => ({ ...line, curved: {}, walls: {} });

/** Curved legs, legs on walls and level notes, of which no older file has any. */
const fromThree = (document: PlainDocument): PlainDocument => ({
  ...document,
  levels: { allowable: null, notes: {} },
  lines: mapped(document['lines'], lineOfFour),
  specs: mapped(document['specs'], specOfFour),
});

/** Marks that what is observed moves, of which no older file observes anything; no pictures. */
const fromFour = (document: PlainDocument): PlainDocument => ({
  ...document,
  marks: mapped(document['marks'], (mark) => ({ ...mark, fixed: false })),
  observations: {},
  trusts: {
    tapeLeast: 1 / 4,
    tapeShare: 1 / 2400,
    square: Math.PI / 360,
    straight: 1 / 2,
    offset: 1 / 2,
    bearing: Math.PI / 180,
  },
  origin: null,
  underlays: {},
  pictures: {},
});

const gateOfFive = (gate: PlainDocument): PlainDocument => ({
  ...gate,
  latchHeight: null,
  route: null,
  powered: false,
});

const specOfFive = (spec: PlainDocument): PlainDocument => ({
  ...spec,
  grade: null,
  mesh: null,
  wire: null,
  solid: null,
  leastDepth: 0,
});

/**
 * What the place does to a fence, what fabric and pipe are made of, what a fence guards and what its gates
 * have to let pass, of which no older file says anything.
 */
const fromFive = (document: PlainDocument): PlainDocument => ({
  ...document,
  conditions: { soil: null, isolated: false, frost: null, wind: null, bays: 'by build' },
  acceptances: {},
  lines: mapped(document['lines'], (line) => ({ ...line, guards: null })),
  gates: mapped(document['gates'], gateOfFive),
  specs: mapped(document['specs'], specOfFive),
});

const featureOfSix = (feature: PlainDocument): PlainDocument =>
  feature['kind'] === 'utility' ? { ...feature, run: 'buried' } : feature;

const specOfSix = (spec: PlainDocument): PlainDocument => ({
  ...spec,
  middleRail: null,
  bottomRail: null,
  barbedWire: null,
});

/** Rules of towns, ice, services overhead, further rails, barbed wire and sills, of which no older file says anything. */
const fromSix = (document: PlainDocument): PlainDocument => ({
  ...document,
  conditions: isPlain(document['conditions'])
    ? { ...document['conditions'], ice: null }
    : document['conditions'],
  townRules: {},
  features: mapped(document['features'], featureOfSix),
  gates: mapped(document['gates'], (gate) => ({ ...gate, threshold: null })),
  specs: mapped(document['specs'], specOfSix),
});

/** How the trade counted when such files were written: what an older file leaves unsaid. */
const countingOfSeven = {
  bandSpacing: 15,
  bandInset: 9,
  postTies: 15,
  railTies: 24,
  hogRings: 24,
  barShort: 2,
  railStick: 252,
  railJoint: 'swaged',
  postStick: null,
  roll: 600,
  kerf: 1 / 8,
  bag: 80,
  gravel: 0,
  times: {},
  spares: {},
};

/** Counting, work and alternatives, and fence that is no chain link, of which no older file says anything. */
const fromSeven = (document: PlainDocument): PlainDocument => ({
  ...document,
  counting: countingOfSeven,
  work: { tearOut: 0, rock: 0, access: 0, remark: '' },
  alternatives: {},
  specs: mapped(document['specs'], (spec) => ({
    ...spec,
    infill: { kind: 'chain link' },
    postSection: 'round',
  })),
});

/** Of posts that are not said to be square. */
const pipeOfEight = (pipe: unknown, section: unknown): unknown =>
  isPlain(pipe) ? { ...pipe, section } : pipe;

const infillOfEight = (infill: unknown): unknown => {
  if (!isPlain(infill)) return infill;
  if (infill['kind'] === 'boards') return { ...infill, board: '', rail: '' };
  return infill['kind'] === 'panels' ? { ...infill, panel: '' } : infill;
};

const specOfEight = ({ postSection, ...spec }: PlainDocument): PlainDocument => ({
  ...spec,
  selvage: null,
  infill: infillOfEight(spec['infill']),
  linePost: pipeOfEight(spec['linePost'], postSection),
  terminalPost: pipeOfEight(spec['terminalPost'], postSection),
  gatePost: pipeOfEight(spec['gatePost'], postSection),
});

/** Each post says its section; lumber and what lies in the yard, of which no older file says anything. */
const fromEight = (document: PlainDocument): PlainDocument => ({
  ...document,
  counting: isPlain(document['counting'])
    ? { ...document['counting'], lumber: 192 }
    : document['counting'],
  offcuts: {},
  gates: mapped(document['gates'], (gate) => ({
    ...gate,
    post: pipeOfEight(gate['post'], 'round'),
  })),
  specs: mapped(document['specs'], specOfEight),
});

/** Where the document comes from, of which no older file says anything. */
const fromNine = (document: PlainDocument): PlainDocument => ({
  ...document,
  lineage: { job: null, saves: {} },
});

/**
 * One step for each version of the file format that came before today's. A step that is filed
 * here is never changed again.
 */
export const upgrades: Upgrades = {
  1: fromOne,
  2: fromTwo,
  3: fromThree,
  4: fromFour,
  5: fromFive,
  6: fromSix,
  7: fromSeven,
  8: fromEight,
  9: fromNine,
};
