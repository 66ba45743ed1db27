import type { MarkId, VertexId } from '../../site/ids.ts';
import { legsOf } from '../../site/legsOf.ts';
import type { Site } from '../../site/site.ts';
import type { Layout, Run } from '../layout.ts';
import type { PostId } from '../post.ts';

const marksOfRun = (site: Site, run: Run): readonly MarkId[] => {
  const line = site.lines[run.line];
  const own = new Set<VertexId>(run.legs);
  const legs = line === undefined ? [] : legsOf(line).filter(({ id }) => own.has(id));
  return legs.flatMap(({ start, end }) => [start, end]);
};

/**
 * The posts that stand where they were sketched though others were measured: at marks, or on runs
 * between marks, that no reading holds.
 */
export const sketchedPosts = (site: Site, { lines, survey }: Layout): ReadonlySet<PostId> => {
  if (survey.stands === 'sketched' || survey.stands === 'large') return new Set();
  const loose = new Set(survey.loose);
  const atMarks = new Set<string>(Object.keys(site.marks).map((id) => `post:${id}`));
  const found = survey.loose.map((id): PostId => `post:${id}`);
  for (const line of Object.values(lines)) {
    for (const run of line.runs) {
      if (!marksOfRun(site, run).some((mark) => loose.has(mark))) continue;
      for (const { post } of run.posts) if (!atMarks.has(post)) found.push(post);
    }
  }
  return new Set(found);
};
