import type { GateLayout } from '../../../engine/layout.ts';
import { writer } from '../../../engine/set/setCase.ts';
import type { SetResult } from '../../../engine/set/setOf.ts';
import { useLayout, useSite } from '../../bench.ts';

interface Props {
  readonly set: SetResult;
  readonly gate: GateLayout;
}

const ranks = { true: 'Enough:', false: 'Not enough by itself:' } as const;

/** How true the posts stand, and what can be done, the least reach first. */
export const Remedies = ({ set: { outOfParallel, remedies }, gate: { posts } }: Props) => {
  const write = writer({ site: useSite() });
  const layout = useLayout();
  const wider = outOfParallel !== null && outOfParallel > 0 ? 'top' : 'bottom';
  const tagOf = (end: 'start' | 'end' | null): string =>
    end === null || posts === null ? '' : ` On the sheet: post ${layout.posts[posts[end]]?.tag}.`;
  return (
    <div className="remedies">
      {outOfParallel !== null && (
        <p>
          {outOfParallel === 0
            ? 'The posts stand parallel.'
            : `The opening is ${write(Math.abs(outOfParallel))} wider at the ${wider}.`}
        </p>
      )}
      {remedies.length > 0 && (
        <>
          <h3>What helps, the least reach first</h3>
          <ol>
            {remedies.map(({ kind, what, enough, working, post }) => (
              <li key={kind}>
                <b>{kind === 'measure' ? 'First:' : ranks[`${enough}`]}</b> {what}
                {tagOf(post)} <small>{working}.</small>
              </li>
            ))}
          </ol>
        </>
      )}
    </div>
  );
};
