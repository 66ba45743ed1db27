import { phrase } from '../../../phrases/phrase.ts';
import type { ShotId } from '../../../site/ids.ts';
import type { Shot } from '../../../site/shot.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useBench, useSite } from '../../bench.ts';
import { centreOn } from '../../centreOn.ts';
import { LevelNotesKey } from '../levels/LevelNotesKey.tsx';
import { BringShots } from './BringShots.tsx';

/** A list longer than this is no list any more: the pad shows where the others are. */
const mostListed = 60;

/** Every grade shot by name and height, and the key that brings more in from a file. */
export const Shots = () => {
  const bench = useBench();
  const { shots, lengths } = useSite();
  const all = Object.entries(shots) as [ShotId, Shot][];
  const goTo = (id: ShotId, at: Shot) => {
    bench.session.setState({ selection: { kind: 'shot', id }, tool: 'select' });
    centreOn(bench, at);
  };
  return (
    <section aria-label={phrase`Grade shots`}>
      <h3>{phrase`Grade shots`}</h3>
      {all.length === 0 ? (
        <p className="note">{phrase`No grade shot yet: fence is laid out as on the level.`}</p>
      ) : (
        <details className="more">
          <summary>
            {all.length === 1 ? phrase`The one shot` : phrase`All ${all.length} shots`}
          </summary>
          <ul className="plain">
            {all.slice(0, mostListed).map(([id, shot], n) => (
              <li key={id}>
                <button type="button" onClick={() => goTo(id, shot)}>
                  {shot.label === '' ? phrase`Shot ${n + 1}` : shot.label}:{' '}
                  {formatLength(shot.z, lengths)}
                </button>
              </li>
            ))}
          </ul>
          {all.length > mostListed && (
            <p className="note">{phrase`and ${all.length - mostListed} more on the pad`}</p>
          )}
        </details>
      )}
      <LevelNotesKey />
      <BringShots />
    </section>
  );
};
