/**
 * How much one site may hold. Ours, no published source: ten times the largest yard that one
 * crew builds, and little enough that a tablet still answers.
 */
export const limits = {
  /** Characters in a file. */
  text: 20_000_000,
  marks: 20_000,
  lines: 5_000,
  gates: 5_000,
  features: 5_000,
  pins: 20_000,
  shots: 20_000,
  observations: 20_000,
  acceptances: 5_000,
  townRules: 1_000,
  alternatives: 50,
  offcuts: 1_000,
  underlays: 20,
  pictures: 20,
  specs: 1_000,
  hardware: 1_000,
  /** Base64 characters of one picture that is kept in the file (6 MB), and of all together (10.8 MB). */
  pictureText: 8_000_000,
  picturesText: 14_400_000,
  /** Marks passed by one line, wall or boundary. */
  path: 20_000,
  /** Objects in objects; a site has six. */
  depth: 12,
} as const;

/** The maps of a site that its entries are kept in. */
export type MapName =
  | 'marks'
  | 'lines'
  | 'gates'
  | 'features'
  | 'pins'
  | 'shots'
  | 'observations'
  | 'acceptances'
  | 'townRules'
  | 'alternatives'
  | 'offcuts'
  | 'underlays'
  | 'pictures'
  | 'specs'
  | 'hardware';

export const mapNames: readonly MapName[] = [
  'marks',
  'lines',
  'gates',
  'features',
  'pins',
  'shots',
  'observations',
  'acceptances',
  'townRules',
  'alternatives',
  'offcuts',
  'underlays',
  'pictures',
  'specs',
  'hardware',
];
