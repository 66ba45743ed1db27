import type { Posts } from '../../engine/post.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import type { Atom, Text } from '../atom.ts';
import { breaksFor } from '../explode/brokenAt.ts';
import { makeLettering } from '../lettering/lettering.ts';
import { textBox } from '../lettering/textBox.ts';
import { heightText } from '../plan/heightText.ts';
import { textWidth } from '../textWidth.ts';
import { wrapText } from '../wrapText.ts';
import { exaggerationText } from './exaggeration.ts';
import { profileMarks } from './profileMarks.ts';
import { profileScale, type ProfileScale } from './profileScale.ts';
import { avoidFabric, overPosts, profileTexts, underBase } from './profileTexts.ts';
import { profileView, type ProfileView } from './profileView.ts';
import type { TapePiece } from './tapePiece.ts';
import { xAt, type TapeReach } from './tapeReach.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The pieces of a strip with their places on it, and what stands on them. */
export interface ProfileUnder {
  readonly pieces: readonly TapePiece[];
  readonly reaches: readonly TapeReach[];
  readonly posts: Posts;
  readonly style: LengthStyle;
}

/** A box on the strip, paper inches: from its left and its top, and how wide it is. */
interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  /** Paper inches for the heights. */
  readonly most: number;
}

/** The profile of a strip, from `top` to `bottom` of it, paper inches; `times`: how much heights are drawn larger. */
export interface TapeProfile {
  readonly atoms: readonly Atom[];
  readonly top: number;
  readonly bottom: number;
  readonly times: number;
}

const size = 0.141;
const lineHeight = 0.18;

const textAt = (text: string, x: number, y: number, weight: Text['weight']): Text => ({
  do: 'text',
  text,
  at: { x, y },
  size,
  angle: radians(0),
  align: 'left',
  baseline: 'middle',
  weight,
  ink: weight === 'bold' ? 'text' : 'dimension',
  halo: 'none',
});

/** What the figures of a profile are. */
const keyText = (views: readonly ProfileView[], { lowest }: ProfileScale, style: LengthStyle) => {
  const gap = views.some(({ unknown }) => unknown.length > 0);
  const base = heightText(lowest, style);
  return [
    phrase`Over posts: height above ground. Under the line at ${base}: heights of the ground, and grades from left to right.`,
    ...(gap ? [phrase`In the gaps the ground is not known.`] : []),
  ].join(' ');
};

/** Ground that is all known and lies within this of one height needs no profile, inches; ours. */
const level = 1.5;

const isLevel = (views: readonly ProfileView[]): boolean => {
  const heights = views.flatMap(({ ground }) => ground.flat().map(({ z }) => z));
  const known = views.every(({ unknown }) => unknown.length === 0);
  return known && Math.max(...heights) - Math.min(...heights) <= level;
};

/** How heights are drawn, and what the figures are, beside it or under it where it is too long. */
const caption = (name: string, key: string, { left, top, width }: Place): Text[] => {
  const end = textWidth(name, size, 'bold') + 0.12;
  const beside = end + textWidth(key, size, 'regular') <= width;
  const setting = { width, size, weight: 'regular' } as const;
  const lines = beside ? [key] : wrapText(key, setting);
  return [
    textAt(name, left, top + lineHeight / 2, 'bold'),
    ...lines.map((line, n) => {
      const [x, row] = beside ? [left + end, 0] : [left, n + 1];
      return textAt(line, x, top + (row + 0.5) * lineHeight, 'regular');
    }),
  ];
};

/**
 * The ground under pieces of fence at the places of the tape over it, with posts and fabric on it
 * and heights drawn larger than lengths by what its caption says. All pieces have one base line, at
 * the lowest ground. Null where nothing is known of the ground, and where it is all known and level.
 */
export const tapeProfile = (
  { pieces, reaches, posts, style }: ProfileUnder,
  place: Place,
): TapeProfile | null => {
  const shown = pieces.flatMap((piece, n) => {
    const reach = reaches[n];
    return reach === undefined ? [] : [{ reach, view: profileView(piece, reach, posts) }];
  });
  const views = shown.map(({ view }) => view);
  const along = reaches[0]?.scale ?? 0;
  const { top, most, left, width } = place;
  const rough = profileScale(views, { along, most, top });
  if (rough === null || isLevel(views)) return null;
  const name = phrase`Profile, ${exaggerationText(rough.times)}.`;
  const head = caption(name, keyText(views, rough, style), place);
  const under = Math.max(...head.map(({ at }) => at.y)) + lineHeight / 2 + overPosts;
  const scale = { ...rough, base: rough.base + under - top };
  const bottom = scale.base + underBase;
  const strip = width + 2 * left;
  const window = { minX: 0, minY: top, maxX: strip, maxY: bottom };
  const room = makeLettering(window, head.map(textBox));
  const sheet = { scale, style, room, width: strip };
  for (const view of views) avoidFabric(view, sheet);
  const written = views.flatMap((view) => profileTexts(view, sheet, under));
  const breaks = breaksFor(written.flatMap((atom) => (atom.do === 'text' ? [textBox(atom)] : [])));
  return {
    atoms: [
      ...head,
      ...shown.flatMap(({ reach, view }) => {
        const ends = { x: reach.x, end: xAt(reach, reach.to), top: under };
        return profileMarks(view, scale, { ...ends, breaks });
      }),
      ...written,
    ],
    top,
    bottom,
    times: scale.times,
  };
};
