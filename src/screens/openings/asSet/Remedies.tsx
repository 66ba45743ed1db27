import { writer } from '../../../engine/set/setCase.ts';
import type { SetResult } from '../../../engine/set/setOf.ts';
import { useSite } from '../../bench.ts';

/** How true the posts stand, and what can be done, the least reach first. */
export const Remedies = ({ set }: { readonly set: SetResult }) => {
  const write = writer({ site: useSite() });
  const { outOfParallel, remedies } = set;
  const wider = outOfParallel !== null && outOfParallel > 0 ? 'top' : 'bottom';
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
          <h4>What helps, the least work first</h4>
          <ol>
            {remedies.map(({ kind, what, enough, working }) => (
              <li key={kind} className={enough ? 'enough' : ''}>
                <b>
                  {enough ? 'Enough:' : kind === 'measure' ? 'First:' : 'Not enough by itself:'}
                </b>{' '}
                {what} <small>{working}.</small>
              </li>
            ))}
          </ol>
        </>
      )}
    </div>
  );
};
