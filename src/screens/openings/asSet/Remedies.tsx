import type { GateLayout } from '../../../engine/layout.ts';
import { writer } from '../../../engine/set/setCase.ts';
import type { SetResult } from '../../../engine/set/setOf.ts';
import { useLayout, useSite } from '../../bench.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly set: SetResult;
  readonly gate: GateLayout;
}

const ranks = {
  true: phrase`Enough:`,
  false: phrase`Not enough by itself:`,
} as const;

/** How much wider an opening is at the top (above 0) or at the bottom, and that as it is written. */
const parallelText = (outOfParallel: number, written: string): string => {
  if (outOfParallel === 0) return phrase`The posts stand parallel.`;
  return outOfParallel > 0
    ? phrase`The opening is ${written} wider at the top.`
    : phrase`The opening is ${written} wider at the bottom.`;
};

/** How true the posts stand, and what can be done, the least reach first. */
export const Remedies = ({ set: { outOfParallel, remedies }, gate: { posts } }: Props) => {
  const write = writer({ site: useSite() });
  const layout = useLayout();
  const tagOf = (end: 'start' | 'end'): string =>
    (posts === null ? undefined : layout.posts.get(posts[end])?.tag) ?? '?';
  return (
    <div className="remedies">
      {outOfParallel !== null && (
        <p>{parallelText(outOfParallel, write(Math.abs(outOfParallel)))}</p>
      )}
      {remedies.length > 0 && (
        <>
          <h3>{phrase`What helps, the least reach first`}</h3>
          <ol>
            {remedies.map(({ kind, what, enough, working, post }) => (
              <li key={kind}>
                <b>{kind === 'measure' ? phrase`First:` : ranks[`${enough}`]}</b> {what}{' '}
                {post !== null && posts !== null && phrase`On the sheet: post ${tagOf(post)}.`}{' '}
                <small>{working}.</small>
              </li>
            ))}
          </ol>
        </>
      )}
    </div>
  );
};
