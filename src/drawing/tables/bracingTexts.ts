import type { Layout } from '../../engine/layout.ts';
import { firstLines } from '../../engine/structure/firstLines.ts';
import { isWoven } from '../../site/isWoven.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Site } from '../../site/site.ts';
import { bracedPosts, braceRailFrom, braceRods } from '../../trade/bracing.ts';
import { phrase } from '../../phrases/phrase.ts';

const railText = ({ topRail, fabricHeight }: FenceSpec): string => {
  const { height, source } = braceRailFrom;
  if (topRail === null) return phrase`with a brace rail, since it has no top rail (${source.text})`;
  return fabricHeight >= height
    ? phrase`with a brace rail (${source.text})`
    : phrase`its top rail in place of a brace rail (${source.text})`;
};

/** How the terminals of each build of chain link that stands on a site are braced to the next post, and who says so. */
export const bracingTexts = (site: Site, layout: Pick<Layout, 'lines'>): string[] => {
  const stand = [...firstLines(site, layout).keys()].flatMap((id) => site.specs[id] ?? []);
  // boards and panels pull on no terminal
  const built = stand.filter(isWoven);
  if (built.length === 0) return [];
  return [
    ...built.map(
      (spec) => phrase`${spec.label}: terminals braced to the next post, ${railText(spec)}.`,
    ),
    phrase`Braces: ${bracedPosts.text}; ${braceRods.text}.`,
  ];
};
