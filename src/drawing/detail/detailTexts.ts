import type { GateLayout } from '../../engine/layout.ts';
import type { Post } from '../../engine/post.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { heldTexts } from '../opening/heldTexts.ts';
import { openingText } from '../opening/openingText.ts';
import { shortStyle } from '../tables/shortStyle.ts';
import { phrase } from '../../phrases/phrase.ts';
import { sectionText } from '../tables/sectionText.ts';

/** A length of a gate as its detail writes it. */
export const sizeText = (length: number, site: Site): string =>
  formatLength(inches(length), fineStyle(site.lengths));

/** A short length, such as of a hole. */
export const shortText = (length: number, site: Site): string =>
  formatLength(inches(length), shortStyle(site.lengths));

/** The width to hold, and under it from where to where it holds. */
export const openingTexts = ({ opening }: GateLayout, site: Site): string => {
  const held = heldTexts(opening, site.lengths);
  const hold = openingText(opening.target, site.lengths);
  if (opening.terms.every(({ role }) => role === 'gap')) return phrase`clear ${hold}`;
  return `${phrase`hold ${hold}`}\n${held === null ? phrase`none holds for sure` : phrase`${held.from} to ${held.to}`}`;
};

/** What is dug for a post, or how it is set on a wall; millimetres are named once. */
export const holeText = ({ hole: { diameter, depth }, wall }: Post, site: Site): string => {
  const [wide, deep] = [shortText(diameter, site), shortText(depth, site)];
  const across = wide.endsWith(' mm') ? wide.slice(0, -3) : wide;
  if (wall === null) return phrase`hole ${across} × ${deep}`;
  return wall.set.kind === 'cored'
    ? phrase`core ${across} × ${deep}`
    : phrase`plate ${wide} square`;
};

/** A post by its tag and outside diameter. */
export const postText = ({ tag, od, section }: Post, site: Site): string =>
  `${tag} ${sectionText({ od, section }, site.lengths)}`;
