import { partsOf } from '../../engine/ground/profile.ts';
import type { LineLayout, Layout, Run } from '../../engine/layout.ts';
import type { StretchOnGrade } from '../../engine/posts/fencesOn.ts';
import type { Infill } from '../../site/infill.ts';
import { infillWord } from '../../site/infillWord.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { gradeText } from '../tape/gradeText.ts';
import { infillOn } from '../plan/infillOn.ts';
import { shortStyle } from './shortStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Ground that rises by less than this along a stretch, and is nowhere steeper, is level; ours. */
const level = { rise: 1, grade: 0.005 } as const;

/** The steepest grade of a run between two stations in plan, rise over run with its sign. */
const steepestBetween = (run: Run, from: number, to: number): number =>
  partsOf(run.ground?.profile ?? { known: [] })
    .filter((part) => part.to.at > from && part.from.at < to)
    .reduce((most, { grade }) => (Math.abs(grade) > Math.abs(most) ? grade : most), 0);

/** How what hangs in a stretch takes the slope. */
const wayText = (
  { way, bays, step }: StretchOnGrade,
  { style, of }: { readonly style: LengthStyle; readonly of: Infill['kind'] },
): string => {
  const write = (length: number) => formatLength(inches(Math.abs(length)), shortStyle(style));
  if (way === 'step')
    return step < 0
      ? phrase`steps down by ${write(step)} at each post`
      : phrase`steps up by ${write(step)} at each post`;
  if (way === 'wall') return phrase`steps as the wall does`;
  if (of !== 'chain link') return phrase`${infillWord({ kind: of })} follow the grade`;
  const cut = Math.max(0, ...bays.map(({ endCut }) => endCut));
  return phrase`follows the grade, ends of the fabric cut up to ${write(cut)} out of square`;
};

const stretchText = (
  run: Run,
  fence: StretchOnGrade,
  { posts }: Layout,
  { lengths: style, of }: Pick<Site, 'lengths'> & { readonly of: Infill['kind'] },
): string[] => {
  const [first, last] = [fence.posts.at(0), fence.posts.at(-1)];
  if (first === undefined || last === undefined) return [];
  const rise = last.ground - first.ground;
  const steepest = steepestBetween(run, first.at, last.at);
  if (Math.abs(rise) < level.rise && Math.abs(steepest) < level.grade) return [];
  const tag = (n: number): string => posts.get(fence.stands.at(n) ?? 'post:')?.tag ?? '?';
  const by = formatLength(inches(Math.abs(rise)), style);
  // over a step of a wall there is no grade
  const grade = fence.way === 'wall' ? '' : phrase`, steepest ${gradeText(steepest)}`;
  const way = wayText(fence, { style, of });
  return [
    rise < 0
      ? phrase`${tag(0)} to ${tag(-1)} falls ${by}${grade}; ${way}.`
      : phrase`${tag(0)} to ${tag(-1)} rises ${by}${grade}; ${way}.`,
  ];
};

/** Whether lengths along a run differ from those on the level by as much as a tape shows. */
const isSloped = ({ ground, length }: Run): boolean =>
  ground !== null && Math.abs(length - ground.profile.length) >= 1 / 32;

/**
 * How a line stands on sloping ground, a text for each stretch that is not level: its rise from tag to
 * tag, its steepest grade, and how its fabric takes it; first, once, that lengths are along the
 * grade. None for a line on level ground, or of which none is known.
 */
export const slopeTexts = (line: LineLayout, layout: Layout, site: Site): string[] => {
  const how = { lengths: site.lengths, of: infillOn(site, line.id) };
  const stretches = line.runs.flatMap((run) =>
    (run.ground?.fences ?? []).flatMap((fence) => stretchText(run, fence, layout, how)),
  );
  const along = line.runs.some(isSloped) ? [phrase`Lengths are along the grade.`] : [];
  return [...along, ...stretches];
};
