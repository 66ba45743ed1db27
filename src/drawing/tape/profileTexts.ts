import { isTerminal } from '../../engine/post.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import type { Atom, Text } from '../atom.ts';
import { segmentsOutline } from '../explode/polylineOutline.ts';
import { bestOf } from '../lettering/bestOf.ts';
import { labelAt, labelSize, type LabelStyle } from '../lettering/label.ts';
import type { Lettering } from '../lettering/lettering.ts';
import { lineStrip } from '../lettering/lineStrips.ts';
import { heightText } from '../plan/heightText.ts';
import { shortStyle } from '../tables/shortStyle.ts';
import { gradeText } from './gradeText.ts';
import { yAt, type ProfileScale } from './profileScale.ts';
import type { Height, ProfileView } from './profileView.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a profile is lettered with: its scale, how lengths are written, and where there is room. */
export interface ProfileSheet {
  readonly scale: ProfileScale;
  readonly style: LengthStyle;
  readonly room: Lettering;
  /** Of the strip, paper inches: no text stands out of it. */
  readonly width: number;
}

const size = 0.141;
/** From the base line to the middle of each row under it, paper inches. */
const rows = { heights: [0.13, 0.29], grades: 0.46 } as const;
/** Room under the base line, and over the highest post. */
export const underBase = 0.56;
export const overPosts = 0.18;

const look = (text: string, ink: LabelStyle['ink']): LabelStyle => ({
  text,
  size,
  weight: 'regular',
  ink,
});

/** A text over its post rises so far to stand clear of fabric that rises beside it, paper inches. */
const rises = [0, 0.03, 0.06, 0.09] as const;

/** Marks the edges of the fabric, so that letters keep off them where they can. */
export const avoidFabric = ({ fabric }: ProfileView, { scale, room }: ProfileSheet): void => {
  const at = ({ x, z }: Height) => ({ x, y: yAt(scale, z) });
  for (const edge of fabric.flatMap(({ bottom, top }) => [bottom, top]))
    edge.slice(1).forEach((to, n) => room.avoid(lineStrip(at(edge[n] ?? to), at(to))));
};

/** A text on its middle at the best of some heights of the page that are free, held to the strip. */
const letter = (
  style: LabelStyle,
  x: number,
  ys: readonly number[],
  { room, width }: ProfileSheet,
): readonly Text[] => {
  const half = labelSize(style).width / 2 + 0.01;
  const middle = Math.min(width - half, Math.max(half, x));
  const labels = ys.map((y) => labelAt(style, { x: middle, y }, radians(0)));
  const best = bestOf(room, labels);
  if (best === null) return [];
  room.take(best.box);
  return best.texts;
};

/** The places whose heights matter, first what matters most: ends, the lowest, breaks, then posts. */
const heightsOf = (view: ProfileView, { lowest }: ProfileScale): Height[] => {
  const terminals = view.posts.filter(({ post }) => isTerminal(post));
  const breaks = view.grades.flatMap(({ from, to }) => [from, to]);
  const low = view.ground.flat().find(({ z }) => z === lowest);
  const places = [...(low === undefined ? [] : [low]), ...terminals, ...breaks, ...view.posts];
  return places.filter(
    ({ x }, n) => places.findIndex((other) => Math.abs(other.x - x) < 0.02) === n,
  );
};

const heights = (view: ProfileView, sheet: ProfileSheet): Atom[] => {
  const { scale, style } = sheet;
  const { base } = scale;
  const at = rows.heights.map((row) => base + row);
  return heightsOf(view, scale).flatMap(({ x, z }): Atom[] => {
    const texts = letter(look(heightText(z, style), 'text'), x, at, sheet);
    if (texts.length === 0) return [];
    const drop = segmentsOutline([
      [
        { x, y: yAt(scale, z) },
        { x, y: base + 0.04 },
      ],
    ]);
    return [
      { do: 'stroke', pen: { ink: 'dimension', width: 0.006, dash: [] }, outline: drop },
      ...texts,
    ];
  });
};

const grades = (view: ProfileView, sheet: ProfileSheet): readonly Text[] =>
  view.grades.flatMap(({ from, to, grade }) => {
    const style = look(gradeText(grade), 'ground');
    const fits = labelSize(style).width + 0.1 < to.x - from.x;
    const y = sheet.scale.base + rows.grades;
    return fits ? letter(style, (from.x + to.x) / 2, [y], sheet) : [];
  });

/** How high posts stand above their ground, over each; terminals first. */
const postHeights = (view: ProfileView, sheet: ProfileSheet): readonly Text[] => {
  const ranked = [true, false].flatMap((first) =>
    view.posts.filter(({ post }) => isTerminal(post) === first),
  );
  return ranked.flatMap(({ post, x, top }) => {
    const text = formatLength(post.above, shortStyle(sheet.style));
    const over = yAt(sheet.scale, top) - 0.1;
    return letter(
      look(text, 'dimension'),
      x,
      rises.map((rise) => over - rise),
      sheet,
    );
  });
};

const gaps = (view: ProfileView, sheet: ProfileSheet, top: number): readonly Text[] =>
  view.unknown.flatMap(({ from, to }) => {
    const style = look(phrase`not known`, 'dimension');
    const fits = labelSize(style).width + 0.1 < to - from;
    return fits ? letter(style, (from + to) / 2, [(top + sheet.scale.base) / 2], sheet) : [];
  });

/**
 * The figures of a profile as far as there is room: over each post how high it stands above its
 * ground, under the base line heights of the ground, and under these its grades.
 */
export const profileTexts = (view: ProfileView, sheet: ProfileSheet, top: number): Atom[] => [
  ...gaps(view, sheet, top),
  ...postHeights(view, sheet),
  ...heights(view, sheet),
  ...grades(view, sheet),
];
