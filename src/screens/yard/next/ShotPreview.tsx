import type { ShotImport } from '../../../importers/csv/shotsFromCsv.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';
import { spot, withElements } from '../../withElements.tsx';

interface Props {
  readonly name: string;
  readonly found: ShotImport;
  readonly onTake: () => void;
  readonly onLeave: () => void;
}

/** Refused rows that are told one by one; a file in the wrong units has nothing but these. */
const mostTold = 20;

/** The least and the most of some coordinates, inches. */
const span = (all: readonly number[]): readonly [number, number] =>
  all.reduce<readonly [number, number]>(
    ([low, high], one) => [Math.min(low, one), Math.max(high, one)],
    [Infinity, -Infinity],
  );

/** What a file has of grade shots, in what units it was read, and what of it cannot be taken. */
export const ShotPreview = ({ name, found, onTake, onLeave }: Props) => {
  const { lengths } = useSite();
  const { taken, refused, same, units } = found;
  const shots = taken.map(({ shot }) => shot);
  const rows = [
    { label: phrase`East`, of: shots.map(({ x }) => x) },
    { label: phrase`North`, of: shots.map(({ y }) => y) },
    { label: phrase`Height`, of: shots.map(({ z }) => z) },
  ];
  const write = (length: number) => formatLength(inches(length), lengths);
  return (
    <div className="stack" role="group" aria-label={phrase`What ${name} has`}>
      <p>{withElements(phrase`${spot(0)}: read in ${units}.`, [<b key="name">{name}</b>])}</p>
      {shots.length > 0 && (
        <ul className="plain">
          {rows.map(({ label, of }) => (
            <li key={label}>
              {phrase`${label} from ${write(span(of)[0])} to ${write(span(of)[1])}`}
            </li>
          ))}
        </ul>
      )}
      {same > 0 && <p>{phrase`In the yard as they are: ${same}.`}</p>}
      {refused.length > 0 && (
        <div className="fault" role="alert">
          {phrase`Cannot be taken: ${refused.length}`}
          <ul className="plain">
            {refused.slice(0, mostTold).map(({ line, reason }) => (
              <li key={line}>{phrase`line ${line}: ${reason}`}</li>
            ))}
          </ul>
        </div>
      )}
      <div className="choices">
        <button type="button" className="chief" disabled={shots.length === 0} onClick={onTake}>
          {shots.length === 0 ? phrase`Nothing to take` : phrase`Take ${shots.length}`}
        </button>
        <button type="button" onClick={onLeave}>
          {phrase`Leave it`}
        </button>
      </div>
    </div>
  );
};
