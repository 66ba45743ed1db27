import type { GateLayout, Layout } from '../../engine/layout.ts';
import { leafHangings, type LeafHanging } from '../../engine/structure/leafHangings.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import { shareText } from '../../units/shareText.ts';
import { slack } from '../../geometry/tolerance.ts';
import { phrase } from '../../phrases/phrase.ts';

const partsText = ({ weight }: LeafHanging): string =>
  weight.map(({ label, pounds }) => `${label} ${Math.round(pounds)}`).join(', ');

/** Two leaves that weigh the same on posts that bend alike, in holes that are alike, are told once. */
const alike = (a: LeafHanging, b: LeafHanging): boolean =>
  (['pounds', 'sag', 'asks', 'depth'] as const).every((of) => Math.abs(a[of] - b[of]) < slack);

/**
 * What each leaf of a gate that turns weighs, by its parts, and how far its post gives at the latch; one text
 * for leaves that are alike. None for a gate that hangs on no post.
 */
export const leafLoadTexts = (
  site: Site,
  gate: GateLayout,
  { posts }: Pick<Layout, 'posts'>,
): string[] => {
  const all = leafHangings(site, gate, posts);
  const say = (length: Inches): string => formatLength(length, fineStyle(site.lengths));
  const hole = ({ asks, depth }: LeafHanging): string =>
    asks === 0 ? '' : phrase`; its moment asks for a hole ${say(asks)} deep, ${say(depth)} planned`;
  const tagOf = ({ post }: LeafHanging): string => posts.get(post)?.tag ?? '?';
  return all
    .filter((one, n) => !all.slice(0, n).some((before) => alike(before, one)))
    .map((one) => {
      const same = all.filter((other) => alike(one, other));
      const share = shareText(one.moment / one.capacity);
      const sag = say(one.sag);
      const rest = phrase`weighs about ${Math.round(one.pounds)} lb (${partsText(one)}) and bends it by ${share} of what it may bear; that lets the latch side down by ${sag}`;
      const [first, second] = same.map(tagOf);
      const lead =
        second === undefined
          ? phrase`The leaf on post ${first ?? ''}`
          : phrase`Each leaf on post ${first ?? ''} and ${second}`;
      return `${lead} ${rest}${hole(one)}.`;
    });
};
