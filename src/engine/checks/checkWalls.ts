import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Site } from '../../site/site.ts';
import type { WallTop } from '../../site/wallTop.ts';
import { slack } from '../../geometry/tolerance.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { coreCover } from '../../trade/wallSets.ts';
import type { Flag } from '../flag.ts';
import type { Run } from '../layout.ts';
import type { Post } from '../post.ts';
import { stationInPlan } from '../posts/stationInPlan.ts';
import type { LaidLines } from '../posts/layLines.ts';
import type { SeatedCourse } from '../posts/seatLines.ts';
import { wallReach } from '../wall/wallHole.ts';
import { wallSteps } from '../wall/wallSteps.ts';
import { lineName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

type Say = (length: number) => string;

/** A run on a wall, with its posts that stand on it and where. */
interface OnWall {
  readonly run: Run;
  readonly wall: WallTop;
  readonly spec: FenceSpec;
  readonly stands: readonly { readonly post: Post; readonly station: number }[];
}

const isOnWall = ({ course: { wall } }: SeatedCourse): boolean => wall !== null;

const onWalls = (laid: LaidLines): OnWall[] =>
  laid.seated.filter(isOnWall).flatMap(({ course, spec }): OnWall[] => {
    const { wall } = course;
    const id = `run:${course.key}`;
    const run = laid.lines[course.chain.id]?.runs.find((each) => each.id === id);
    if (wall === null || run === undefined) return [];
    const stands = run.posts.flatMap(({ post: own, station }) => {
      const post = laid.posts.get(own);
      return post === undefined ? [] : [{ post, station: stationInPlan(run, station) }];
    });
    return [{ run, wall, spec, stands }];
  });

const placeOf = ({ run }: OnWall): Pick<Flag, 'place' | 'at'> => ({
  place: { kind: 'leg', line: run.line, id: run.legs[0] ?? 'vertex:' },
  at: run.start,
});

/** The post that lacks most of what it needs, and by how much; null where none lacks any. */
const worstOf = (
  { stands }: OnWall,
  lacks: (stand: OnWall['stands'][number]) => number,
): { readonly post: Post; readonly by: number } | null =>
  stands.reduce<{ post: Post; by: number } | null>((worst, stand) => {
    const by = lacks(stand);
    return by > (worst?.by ?? slack) ? { post: stand.post, by } : worst;
  }, null);

const tooNarrow = (on: OnWall, say: Say): Flag[] => {
  const worst = worstOf(on, ({ post }) => wallReach(on.wall, post.od) - on.wall.width / 2);
  if (worst === null) return [];
  const { set, width } = on.wall;
  const { tag, hole } = worst.post;
  const left = Math.max(0, (width - hole.diameter) / 2);
  const message =
    set.kind === 'cored'
      ? phrase`The core of post ${tag} leaves ${say(left)} of concrete on each side in a wall ${say(width)} wide: expected ${say(coreCover.length)} at least (${coreCover.source.text}).`
      : phrase`The plate of post ${tag} is ${say(set.side)} wide: expected no more than its wall, ${say(width)}.`;
  return [{ level: 'settle', rule: 'wall too narrow', ...placeOf(on), message }];
};

const nearStep = (on: OnWall, length: number, say: Say): Flag[] => {
  const steps = wallSteps(on.wall, length);
  const worst = worstOf(on, ({ post, station }) =>
    Math.max(0, ...steps.map((at) => wallReach(on.wall, post.od) - Math.abs(at - station))),
  );
  if (worst === null) return [];
  const message = phrase`Post ${worst.post.tag} stands ${say(worst.by)} too near to a step of its wall: expected ${say(wallReach(on.wall, worst.post.od))} from its centre to the step.`;
  return [{ level: 'settle', rule: 'post at a step', ...placeOf(on), message }];
};

const carries = (on: OnWall, name: string): Flag => ({
  level: 'caution',
  rule: 'fence on a wall',
  ...placeOf(on),
  message: phrase`${name} stands on a wall: whether that carries the fence and the wind on it is for a licensed engineer; look for steel and services before drilling.`,
});

/**
 * What fence on walls and kerbs asks for: concrete beside its cores, room for its plates, posts off
 * the steps, and somebody to say that the wall carries it.
 */
export const checkWalls = (site: Site, laid: LaidLines): Flag[] => {
  const say: Say = (length) => formatLength(inches(length), fineStyle(site.lengths));
  return onWalls(laid).flatMap((on) => [
    carries(on, lineName(site, on.run.line)),
    ...tooNarrow(on, say),
    ...nearStep(on, on.run.ground?.profile.length ?? on.run.length, say),
  ]);
};
