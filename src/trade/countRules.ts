import { inches, type Inches } from '../units/inches.ts';
import type { CountingSetting } from './countingSources.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** What rules count: each a sort of thing that a laid out yard has so many of. */
export type Basis =
  | 'fabric'
  | 'fabric end'
  | 'line post'
  | 'post under a rail'
  | 'post without a rail over it'
  | 'rail'
  | 'rail end'
  | 'tension wire'
  | 'brace'
  | 'barbed wire'
  | 'barbed wire post'
  | 'slatted fabric'
  | 'receiver'
  | 'boards'
  | 'board'
  | 'board on a rail'
  | 'board rail at a post'
  | 'panel';

/** Sizes by which things of one rule are told apart. */
export type Size = 'post' | 'rail' | 'height' | 'board' | 'fabric' | 'arms';

/** How many of its item a rule takes for each thing of its basis. */
export type HowMany =
  | { readonly kind: 'each'; readonly times: number }
  /** 1 and one more for every spacing, or part of one, between insets from both ends. */
  | {
      readonly kind: 'up the height';
      readonly every: CountingSetting;
      readonly inset: CountingSetting;
    }
  /** One for every spacing up the height, or part of one, less so many. */
  | { readonly kind: 'up the post'; readonly every: CountingSetting; readonly less: number }
  | { readonly kind: 'along'; readonly every: CountingSetting }
  | { readonly kind: 'length' }
  /** As many as all items of other rules together, on posts of such diameters: over, and up to so many inches. */
  | {
      readonly kind: 'with';
      readonly rules: readonly string[];
      readonly times: number;
      readonly posts: { readonly over: Inches; readonly upTo: Inches };
    };

/** One rule of counting: as data, so that a company can change what it takes and see why. */
export interface CountRule {
  readonly id: string;
  readonly item: string;
  /** The part of the list in which it stands. */
  readonly part: 'infill' | 'fittings' | 'gates';
  readonly basis: Basis | null;
  readonly by: readonly Size[];
  readonly how: HowMany;
  /** How long each one is, where that follows from its height: less a setting. */
  readonly shorter?: CountingSetting;
  /** How it is said beside the count. */
  readonly says: string;
  readonly source: Source;
}

const published = (text: string): Source => ({ text, status: 'published' });
const memory = (text: string): Source => ({ text: phrase`${text}; from memory`, status: 'memory' });
const practice: Source = {
  text: phrase`common practice, no published source`,
  status: 'practice',
};
const company: Source = { text: phrase`company rule`, status: 'practice' };

const bands = ['tension-band', 'brace-band-rail', 'brace-band-rod'];

const each = (times: number): HowMany => ({ kind: 'each', times });

/** Every rule, in the order in which the list prints them. Counts of section 7 of the trade's practice. */
export const countRules: readonly CountRule[] = [
  {
    id: 'fabric',
    item: phrase`Fabric`,
    part: 'infill',
    basis: 'fabric',
    by: ['fabric'],
    how: { kind: 'length' },
    says: phrase`Bays added up, centre to centre, parallel to the grade; openings are not counted.`,
    source: published('ASTM F567-07 4.1; Caltrans Standard Specifications 80-1.04'),
  },
  {
    id: 'tension-bar',
    shorter: 'barShort',
    item: phrase`Tension bar`,
    part: 'fittings',
    basis: 'fabric end',
    by: ['height'],
    how: each(1),
    says: phrase`One at each end of a piece of fabric.`,
    source: published(phrase`Byesville OH fence code: at every terminal, corner and gate post`),
  },
  {
    id: 'tension-band',
    item: phrase`Tension band`,
    part: 'fittings',
    basis: 'fabric end',
    by: ['post'],
    how: { kind: 'up the height', every: 'bandSpacing', inset: 'bandInset' },
    says: phrase`Up each bar, the outermost in from the edges of the fabric.`,
    source: published('UFGS-02821A 3.7'),
  },
  {
    id: 'brace-band-rail',
    item: phrase`Brace band`,
    part: 'fittings',
    basis: 'rail end',
    by: ['post'],
    how: each(1),
    says: phrase`One at each end of a rail.`,
    source: memory('CLFMI'),
  },
  {
    id: 'rail-end',
    item: phrase`Rail end`,
    part: 'fittings',
    basis: 'rail end',
    by: ['rail'],
    how: each(1),
    says: phrase`One where a rail ends at a post.`,
    source: published(phrase`Byesville OH fence code: a rail end fitting at terminals`),
  },
  {
    id: 'loop-cap',
    item: phrase`Loop cap`,
    part: 'fittings',
    basis: 'post under a rail',
    by: ['post', 'rail'],
    how: each(1),
    says: phrase`One a post that the top rail runs over.`,
    source: memory('CLFMI'),
  },
  {
    id: 'post-cap',
    item: phrase`Post cap`,
    part: 'fittings',
    basis: 'post without a rail over it',
    by: ['post'],
    how: each(1),
    says: phrase`One a post that no rail runs over.`,
    source: memory('CLFMI'),
  },
  {
    id: 'tie-post',
    item: phrase`Tie at posts`,
    part: 'fittings',
    basis: 'line post',
    by: [],
    how: { kind: 'up the post', every: 'postTies', less: 1 },
    says: phrase`Up each line post; at the top the rail has its own.`,
    source: published(phrase`UFGS-02821A 3.7; Byesville OH fence code`),
  },
  {
    id: 'tie-rail',
    item: phrase`Tie at rails`,
    part: 'fittings',
    basis: 'rail',
    by: [],
    how: { kind: 'along', every: 'railTies' },
    says: phrase`Along each rail that fabric is tied to.`,
    source: published(phrase`UFGS-02821A 3.7; Byesville OH fence code`),
  },
  {
    id: 'tension-wire',
    item: phrase`Tension wire`,
    part: 'infill',
    basis: 'tension wire',
    by: [],
    how: { kind: 'length' },
    says: phrase`Along the bottom without a bottom rail, along the top without a top rail.`,
    source: company,
  },
  {
    id: 'hog-ring',
    item: phrase`Hog ring`,
    part: 'fittings',
    basis: 'tension wire',
    by: [],
    how: { kind: 'along', every: 'hogRings' },
    says: phrase`Along each tension wire.`,
    source: memory('ASTM F567'),
  },
  {
    id: 'truss-rod',
    item: phrase`Truss rod`,
    part: 'fittings',
    basis: 'brace',
    by: [],
    how: each(1),
    says: phrase`One a brace.`,
    source: published('Caltrans 80-3.03; Tremonton UT 3.18.010'),
  },
  {
    id: 'tightener',
    item: phrase`Truss rod tightener`,
    part: 'fittings',
    basis: 'brace',
    by: [],
    how: each(1),
    says: phrase`One a truss rod.`,
    source: published('Caltrans 80-3.03'),
  },
  {
    id: 'brace-band-rod',
    item: phrase`Brace band`,
    part: 'fittings',
    basis: 'brace',
    by: ['post'],
    how: each(1),
    says: phrase`One where a truss rod is held to its terminal.`,
    source: memory('CLFMI'),
  },
  {
    id: 'bolt',
    item: phrase`Carriage bolt and nut, 5/16 × 1-1/4`,
    part: 'fittings',
    basis: null,
    by: [],
    how: { kind: 'with', rules: bands, times: 1, posts: { over: inches(0), upTo: inches(4) } },
    says: phrase`One a band on posts up to 4 in.`,
    source: memory('CLFMI'),
  },
  {
    id: 'bolt-large',
    item: phrase`Carriage bolt and nut, 3/8 × 1-3/4`,
    part: 'fittings',
    basis: null,
    by: [],
    how: {
      kind: 'with',
      rules: bands,
      times: 1,
      posts: { over: inches(4), upTo: inches(Infinity) },
    },
    says: phrase`One a band on posts over 4 in.`,
    source: memory(phrase`as sellers of bands list them`),
  },
  {
    id: 'barbed-wire',
    item: phrase`Barbed wire`,
    part: 'infill',
    basis: 'barbed wire',
    by: [],
    how: { kind: 'length' },
    says: phrase`Each strand as long as the fabric.`,
    source: company,
  },
  {
    id: 'barbed-arm',
    item: phrase`Barbed wire arm`,
    part: 'fittings',
    basis: 'barbed wire post',
    by: ['post', 'arms'],
    how: each(1),
    says: phrase`One a post.`,
    source: company,
  },
  {
    id: 'slats',
    item: phrase`Slats or screen`,
    part: 'infill',
    basis: 'slatted fabric',
    by: ['height'],
    how: { kind: 'length' },
    says: phrase`As long as the fabric that has them.`,
    source: company,
  },
  {
    id: 'board',
    item: phrase`Board`,
    part: 'infill',
    basis: 'board',
    by: ['board', 'height'],
    how: each(1),
    says: phrase`One for every board and gap along the fence, the last one whole.`,
    source: company,
  },
  {
    id: 'board-screw',
    item: phrase`Screw for boards`,
    part: 'fittings',
    basis: 'board on a rail',
    by: [],
    how: each(2),
    says: phrase`Two where a board crosses a rail.`,
    source: practice,
  },
  {
    id: 'board-rail-bracket',
    item: phrase`Bracket for rails of boards`,
    part: 'fittings',
    basis: 'board rail at a post',
    by: [],
    how: each(1),
    says: phrase`One where a rail of boards ends at a post.`,
    source: company,
  },
  {
    id: 'panel',
    item: phrase`Panel`,
    part: 'infill',
    basis: 'panel',
    by: ['board', 'height'],
    how: each(1),
    says: phrase`One a bay, whole or cut: what is cut off is not hung again.`,
    source: company,
  },
  {
    id: 'panel-bracket',
    item: phrase`Panel bracket`,
    part: 'fittings',
    basis: 'panel',
    by: [],
    how: each(4),
    says: phrase`Two at each end of a panel.`,
    source: practice,
  },
  {
    id: 'receiver',
    item: phrase`Drop rod receiver`,
    part: 'gates',
    basis: 'receiver',
    by: [],
    how: each(1),
    says: phrase`One a gate that has one.`,
    source: company,
  },
];
