import type { Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { Atom } from '../../atom.ts';
import { flagAtoms } from '../../explode/flagAtoms.ts';
import { circleOutline, segmentsOutline } from '../../explode/polylineOutline.ts';
import { signAtoms } from '../../explode/signAtoms.ts';
import { pens } from '../../pens.ts';
import { contourStep } from '../../plan/drawGround.ts';
import { drawLeafRooms } from '../../plan/drawLeafRooms.ts';
import { namedLoneMarks } from '../../plan/drawLoneMarks.ts';
import { isHeld } from '../../plan/drawPins.ts';
import type { Block } from '../flow/block.ts';
import { fenceKey } from './fenceKey.ts';
import { groundKey } from './groundKey.ts';
import { keyRows } from './keyRows.ts';
import { groundSign, lineSign, postSign, signWidth, type KeyEntry } from './keySigns.ts';
import { utilityKey } from './utilityKey.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { heightZoneWords } from '../../plan/heightZoneWords.ts';

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
const heightEntries = (site: Site): KeyEntry[] => {
  const shown = Object.values(site.features).flatMap((feature) =>
    feature.kind === 'height zone' ? [heightZoneWords[feature.of]] : [],
  );
  if (shown.length === 0) return [];
  const kinds = [...new Set(shown)].toSorted().join(', ');
  return [{ sign: heightZoneSign(), text: phrase`${kinds}: fence no higher than written` }];
};

/** Flags stand on the plan with their names; what each says is listed on another sheet. */
const flagEntries = (sheet: number | null): KeyEntry[] => {
  if (sheet === null) return [];
  const foot = { x: signWidth / 2, y: 0.08 };
  const says = (number: number): string => phrase`flags F1, F2, …: see sheet ${number}`;
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
const gateEntries = (site: Site): KeyEntry[] => {
  const gates = Object.values(site.gates);
  const ways = new Set(gates.map(({ way }) => way.kind));
  const shown: readonly (readonly [boolean, KeyEntry])[] = [
    [
      ways.has('swing') || ways.has('centre stop'),
      { sign: lineSign('leaf'), text: phrase`gate, open` },
    ],
    [ways.has('cantilever'), { sign: lineSign('leaf'), text: phrase`gate that rolls, closed` }],
    [
      ways.has('cantilever'),
      { sign: lineSign('swing'), text: phrase`rolled aside; R roller post` },
    ],
    [
      gates.some(({ holdOpen }) => holdOpen),
      { sign: [], text: phrase`H: post that holds a leaf open` },
    ],
    [ways.has('centre stop'), { sign: [], text: phrase`S: stop between two leaves` }],
    [
      gates.some(({ receiver }) => receiver !== null),
      { sign: dotSign(), text: phrase`receiver of a drop rod` },
    ],
  ];
  return shown.flatMap(([has, entry]) => (has ? [entry] : []));
};

const pinSign = (): Atom[] => [
  ...postSign(),
  ...signAtoms('held', { x: signWidth / 2 + 0.044, y: -0.044 }),
];

/** Terminals that part a stretch, and what was asked for by hand. */
const postEntries = (site: Site, layout: Layout): KeyEntry[] => {
  const posts = [...layout.posts.values()];
  const pulls = posts.filter(({ kind }) => kind === 'pull').map(({ tag }) => tag);
  const some = pulls.length > 3 ? `${pulls.slice(0, 3).join(', ')}, …` : pulls.join(', ');
  const isKept = Object.values(site.pins).some(({ holds }) => holds.kind === 'clear');
  const kept = groundSign('keep-out', 0.05, 'keep-out');
  return [
    ...(pulls.length > 0 ? [{ sign: postSign(), text: phrase`pull post: ${some}` }] : []),
    ...(posts.some(({ id }) => isHeld(id))
      ? [{ sign: pinSign(), text: phrase`post held at its place` }]
      : []),
    ...(isKept ? [{ sign: kept, text: phrase`kept clear of holes by hand` }] : []),
  ];
};

/** What is shown of the ground: shots, contours, and where leaves come nearest to it. */
const groundEntries = (site: Site, layout: Layout): KeyEntry[] => {
  const { ground } = layout;
  if (ground === null) return [];
  const middle = { x: signWidth / 2, y: 0 };
  const step = contourStep(ground, site.lengths);
  const interval = step === null ? '' : formatLength(step, site.lengths);
  return [
    { sign: signAtoms('shot', middle), text: phrase`grade shot, height over the datum` },
    ...(step === null
      ? []
      : [{ sign: lineSign('contour'), text: phrase`contour, every ${interval}` }]),
    ...(drawLeafRooms(site, layout).length === 0
      ? []
      : [
          {
            sign: signAtoms('low', { ...middle, y: 0.04 }),
            text: phrase`leaf nearest to the ground`,
          },
        ]),
  ];
};

/** What fence stands on that is not the ground. */
const wallEntries = ({ lines }: Layout): KeyEntry[] =>
  Object.values(lines).some(({ runs }) => runs.some(({ wall }) => wall !== null))
    ? [{ sign: groundSign('building', 0.12, 'building'), text: phrase`wall or kerb under a fence` }]
    : [];

/** Marks with a name on which nothing stands; of rough ones what that means. */
const markEntries = (site: Site): KeyEntry[] => {
  const marks = namedLoneMarks(site);
  if (marks.length === 0) return [];
  const rough = marks.some((lone) => lone.rough) ? phrase`; rough: by GPS, not taped` : '';
  const text = phrase`mark on the ground${rough}`;
  return [{ sign: signAtoms('mark', { x: signWidth / 2, y: 0 }), text }];
};

const entriesOf = (site: Site, layout: Layout, flagSheet: number | null): KeyEntry[] => [
  ...fenceKey(site),
  { sign: postSign(), text: phrase`post in its hole` },
  ...postEntries(site, layout),
  ...flagEntries(flagSheet),
  ...gateEntries(site),
  ...groundKey(site),
  ...heightEntries(site),
  ...wallEntries(layout),
  ...utilityKey(site),
  ...groundEntries(site, layout),
  ...markEntries(site),
];

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
): Block => keyRows(entriesOf(site, layout, flagSheet), width);
