import type { Layout } from '../../../engine/layout.ts';
import type { LineId } from '../../../site/ids.ts';
import type { Infill } from '../../../site/infill.ts';
import type { Site } from '../../../site/site.ts';
import { utilityColourCode, utilityColours } from '../../../trade/utilityColours.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { Atom } from '../../atom.ts';
import { flagAtoms } from '../../explode/flagAtoms.ts';
import { circleOutline, rectangleOutline, segmentsOutline } from '../../explode/polylineOutline.ts';
import { fenceOutline } from '../../explode/fenceOutline.ts';
import { signAtoms } from '../../explode/signAtoms.ts';
import type { Ink } from '../../ink.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import { pens, type PenName } from '../../pens.ts';
import { contourStep } from '../../plan/drawGround.ts';
import { drawLeafRooms } from '../../plan/drawLeafRooms.ts';
import { infillOn } from '../../plan/infillOn.ts';
import { namedLoneMarks } from '../../plan/drawLoneMarks.ts';
import { isHeld } from '../../plan/drawPins.ts';
import { textWidth } from '../../textWidth.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Block } from '../flow/block.ts';

/** A sign of the plan, drawn about the middle of its left edge, and what it stands for. */
interface Entry {
  readonly sign: readonly Atom[];
  readonly text: string;
  /** The longest that the text may become, where it is not known yet. */
  readonly longest?: string;
}

const signWidth = 0.5;
const rowHeight = 0.23;
const apart = 0.25;

const ends = [
  { x: 0, y: 0 },
  { x: signWidth, y: 0 },
] as const;

const lineSign = (name: PenName): Atom[] => [
  { do: 'stroke', pen: pens[name], outline: segmentsOutline([ends]) },
];

const groundSign = (ink: Ink, opacity: number, name: PenName): Atom[] => {
  const outline = rectangleOutline({ x: 0, y: -0.07 }, signWidth, 0.14);
  return [
    { do: 'fill', ink, opacity, outline },
    { do: 'stroke', pen: pens[name], outline },
  ];
};

/** Ground with a height limit: its level lines tell it from other ground in grey too. */
const heightZoneSign = (): Atom[] => {
  const [ground, edge] = groundSign('height zone', 0.06, 'height zone');
  const lines = [-0.035, 0.035].map(
    (y) =>
      [
        { x: 0, y },
        { x: signWidth, y },
      ] as const,
  );
  return [
    ...(ground === undefined ? [] : [ground]),
    {
      do: 'stroke',
      pen: { ink: 'height zone', width: 0.004, dash: [] },
      outline: segmentsOutline(lines),
    },
    ...(edge === undefined ? [] : [edge]),
  ];
};

/** Ground with a height limit, by what it is; the limits are written on it. */
const heightEntries = (site: Site): Entry[] => {
  const shown = Object.values(site.features).flatMap((feature) =>
    feature.kind === 'height zone' ? [feature.of] : [],
  );
  if (shown.length === 0) return [];
  const kinds = [...new Set(shown)].toSorted().join(', ');
  return [{ sign: heightZoneSign(), text: `${kinds}: fence no higher than written` }];
};

const postSign = (): Atom[] => {
  const middle = { x: signWidth / 2, y: 0 };
  return [
    { do: 'stroke', pen: pens.thin, outline: circleOutline(middle, 0.062) },
    { do: 'fill', ink: 'post', opacity: 1, outline: circleOutline(middle, 0.034) },
  ];
};

const fences = [
  ['chain link', 'chain-link fence'],
  ['boards', 'fence of boards on rails'],
  ['panels', 'fence of panels'],
] as const satisfies readonly (readonly [Infill['kind'], string])[];

/** Fence by what is between its posts, and the post; chain link where nothing is drawn yet. */
const fenceEntries = (site: Site): Entry[] => {
  const ids = Object.keys(site.lines) as LineId[];
  const drawn = new Set(ids.map((id) => infillOn(site, id)));
  const shown = fences.filter(([of]) => drawn.has(of) || (drawn.size === 0 && of === 'chain link'));
  return [
    ...shown.map(([of, text]): Entry => ({
      sign: [
        { do: 'stroke', pen: pens.fence, outline: fenceOutline(ends, false, { of, window: null }) },
      ],
      text,
    })),
    { sign: postSign(), text: 'post in its hole' },
  ];
};

const features = {
  building: { sign: groundSign('building', 0.07, 'building'), text: 'building' },
  paving: { sign: groundSign('paving', 0.13, 'paving'), text: 'paving' },
  pool: { sign: groundSign('water', 0.16, 'pool'), text: 'pool' },
  'keep-out': { sign: groundSign('keep-out', 0.05, 'keep-out'), text: 'keep out: no holes' },
  boundary: { sign: lineSign('boundary'), text: 'boundary' },
} as const satisfies Record<string, Entry>;

/** The utilities that a plan shows, buried or overhead, in the colours of the code. */
const servicesRun = (site: Site, run: 'buried' | 'overhead'): Entry[] => {
  const shown = Object.values(site.features).flatMap((feature) =>
    feature.kind === 'utility' && feature.run === run ? [feature.service] : [],
  );
  return [...new Set(shown)].toSorted().map((service) => ({
    sign: lineSign(service),
    text: `${utilityColours[service].means} (${utilityColours[service].colour})${run === 'overhead' ? ', overhead' : ''}`,
  }));
};

/** All of them, and the code that their colours are of. */
const utilityEntries = (site: Site): Entry[] => {
  const entries = [...servicesRun(site, 'buried'), ...servicesRun(site, 'overhead')];
  if (entries.length === 0) return [];
  return [...entries, { sign: [], text: utilityColourCode.text }];
};

/** Flags stand on the plan with their names; what each says is listed on another sheet. */
const flagEntries = (sheet: number | null): Entry[] => {
  if (sheet === null) return [];
  const foot = { x: signWidth / 2, y: 0.08 };
  const says = (number: number): string => `flags F1, F2, …: see sheet ${number}`;
  return [
    {
      sign: flagAtoms(foot, 'caution', { staff: 0.17, cloth: 0.1 }),
      text: says(sheet),
      longest: says(99),
    },
  ];
};

const dotSign = (): Atom[] => {
  const outline = circleOutline({ x: signWidth / 2, y: 0 }, 0.03);
  return [
    { do: 'fill', ink: 'gate', opacity: 1, outline },
    { do: 'stroke', pen: pens.gate, outline },
  ];
};

/** Leaves by the way they move, and what stands between two of them. */
const gateEntries = (site: Site): Entry[] => {
  const gates = Object.values(site.gates);
  const ways = new Set(gates.map(({ way }) => way.kind));
  const shown: readonly (readonly [boolean, Entry])[] = [
    [ways.has('swing') || ways.has('centre stop'), { sign: lineSign('leaf'), text: 'gate, open' }],
    [ways.has('cantilever'), { sign: lineSign('leaf'), text: 'gate that rolls, closed' }],
    [ways.has('cantilever'), { sign: lineSign('swing'), text: 'rolled aside; R roller post' }],
    [gates.some(({ holdOpen }) => holdOpen), { sign: [], text: 'H: post that holds a leaf open' }],
    [ways.has('centre stop'), { sign: [], text: 'S: stop between two leaves' }],
    [
      gates.some(({ receiver }) => receiver !== null),
      { sign: dotSign(), text: 'receiver of a drop rod' },
    ],
  ];
  return shown.flatMap(([has, entry]) => (has ? [entry] : []));
};

const pinSign = (): Atom[] => [
  ...postSign(),
  ...signAtoms('held', { x: signWidth / 2 + 0.044, y: -0.044 }),
];

/** Terminals that part a stretch, and what was asked for by hand. */
const postEntries = (site: Site, layout: Layout): Entry[] => {
  const posts = Object.values(layout.posts);
  const pulls = posts.filter(({ kind }) => kind === 'pull').map(({ tag }) => tag);
  const some = pulls.length > 3 ? `${pulls.slice(0, 3).join(', ')}, …` : pulls.join(', ');
  const isKept = Object.values(site.pins).some(({ holds }) => holds.kind === 'clear');
  const kept = groundSign('keep-out', 0.05, 'keep-out');
  return [
    ...(pulls.length > 0 ? [{ sign: postSign(), text: `pull post: ${some}` }] : []),
    ...(posts.some(({ id }) => isHeld(id))
      ? [{ sign: pinSign(), text: 'post held at its place' }]
      : []),
    ...(isKept ? [{ sign: kept, text: 'kept clear of holes by hand' }] : []),
  ];
};

/** What is shown of the ground: shots, contours, and where leaves come nearest to it. */
const groundEntries = (site: Site, layout: Layout): Entry[] => {
  const { ground } = layout;
  if (ground === null) return [];
  const middle = { x: signWidth / 2, y: 0 };
  const step = contourStep(ground, site.lengths);
  const interval = step === null ? '' : formatLength(step, site.lengths);
  return [
    { sign: signAtoms('shot', middle), text: 'grade shot, height over the datum' },
    ...(step === null ? [] : [{ sign: lineSign('contour'), text: `contour, every ${interval}` }]),
    ...(drawLeafRooms(site, layout).length === 0
      ? []
      : [{ sign: signAtoms('low', { ...middle, y: 0.04 }), text: 'leaf nearest to the ground' }]),
  ];
};

/** What fence stands on that is not the ground. */
const wallEntries = ({ lines }: Layout): Entry[] =>
  Object.values(lines).some(({ runs }) => runs.some(({ wall }) => wall !== null))
    ? [{ sign: groundSign('building', 0.12, 'building'), text: 'wall or kerb under a fence' }]
    : [];

/** Marks with a name on which nothing stands; of rough ones what that means. */
const markEntries = (site: Site): Entry[] => {
  const marks = namedLoneMarks(site);
  if (marks.length === 0) return [];
  const rough = marks.some((lone) => lone.rough) ? '; rough: by GPS, not taped' : '';
  const text = `mark on the ground${rough}`;
  return [{ sign: signAtoms('mark', { x: signWidth / 2, y: 0 }), text }];
};

const entriesOf = (site: Site, layout: Layout, flagSheet: number | null): Entry[] => {
  const kinds = new Set(Object.values(site.features).map(({ kind }) => kind));
  const grounds = Object.entries(features).flatMap(([kind, entry]) =>
    kinds.has(kind as keyof typeof features) ? [entry] : [],
  );
  return [
    ...fenceEntries(site),
    ...postEntries(site, layout),
    ...flagEntries(flagSheet),
    ...gateEntries(site),
    ...grounds,
    ...heightEntries(site),
    ...wallEntries(layout),
    ...utilityEntries(site),
    ...groundEntries(site, layout),
    ...markEntries(site),
  ];
};

/**
 * What the signs of a plan stand for, in rows across `width`; only what the site has. `flagSheet` is
 * the number of the sheet that lists the flags, null where there are none; below a hundred the key
 * takes the same room whatever it is.
 */
export const legend = (
  site: Site,
  layout: Layout,
  width: number,
  flagSheet: number | null,
): Block => {
  const atoms: Atom[] = [];
  let [x, row] = [0, 0];
  for (const { sign, text, longest = text } of entriesOf(site, layout, flagSheet)) {
    const lead = sign.length > 0 ? signWidth + 0.08 : 0;
    const own = lead + textWidth(longest, letters.small, 'regular');
    if (x > 0 && x + own > width) [x, row] = [0, row + 1];
    const y = (row + 0.5) * rowHeight;
    atoms.push(...moveAtoms(sign, x, y));
    atoms.push(...lineOfText(text, x + lead, y, { size: letters.small, width: width - lead }));
    x += own + apart;
  }
  return { height: (row + 1) * rowHeight, atoms };
};
