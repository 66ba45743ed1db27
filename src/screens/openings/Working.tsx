import { exactStyle } from '../../drawing/orders/exactStyle.ts';
import { heldTexts } from '../../drawing/opening/heldTexts.ts';
import type { Opening, Term } from '../../engine/opening.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { spot, withElements } from '../withElements.tsx';
import type { Inches } from '../../units/inches.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

interface Props {
  readonly opening: Opening;
  readonly style: LengthStyle;
  /** Of the gate. */
  readonly name: string;
}

const spreads: Readonly<Record<Term['spread'], string>> = {
  uncertain: phrase`not sure`,
  adjustable: phrase`can be set`,
  catch: phraseOf('latch')`catches`,
};

/** A term of one size has no spread to name. */
const spreadText = ({ low, high, spread }: Term): string => (low < high ? spreads[spread] : '');

const sourceText = ({ source, on }: Term): string => (on === '' ? source : `${source}, ${on}`);

/**
 * How an opening came about: each term from low to high, what its spread means, where it is from
 * and of which day; the sum; from where to where it holds.
 */
export const Working = ({ opening, style, name }: Props) => {
  const { terms, target } = opening;
  const own = exactStyle(
    terms.flatMap(({ low, planned, high }) => [low, planned, high]),
    style,
  );
  const write = (value: Inches) => formatLength(value, own);
  return (
    <div className="working">
      <div
        className="scroll"
        role="region"
        aria-label={phrase`Working of the opening, ${name}`}
        tabIndex={0}
      >
        <table>
          <thead>
            <tr>
              <th scope="col">{phrase`Takes up`}</th>
              <th scope="col">{phrase`Low`}</th>
              <th scope="col">{phrase`Planned`}</th>
              <th scope="col">{phrase`High`}</th>
              <th scope="col">{phraseOf('source')`From`}</th>
              <th scope="col">{phrase`Spread`}</th>
            </tr>
          </thead>
          <tbody>
            {terms.map((term, n) => (
              <tr key={`${n} ${term.label}`}>
                <th scope="row">{term.label}</th>
                <td>{write(term.low)}</td>
                <td className="planned">{write(term.planned)}</td>
                <td>{write(term.high)}</td>
                <td className="source">{sourceText(term)}</td>
                <td className="source">{spreadText(term)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">{phrase`Opening to hold`}</th>
              <td />
              <td className="planned">{write(target)}</td>
              <td />
              <td className="source" colSpan={2}>
                {phrase`inside face to inside face`}
              </td>
            </tr>
          </tfoot>
        </table>
      </div>
      <Holds opening={opening} style={style} />
    </div>
  );
};

const Holds = ({ opening, style }: Omit<Props, 'name'>) => {
  const held = heldTexts(opening, style);
  return held === null ? (
    <p className="holds fault">
      {phrase`No opening holds for sure: measure the hinges closer or take a latch with a longer reach.`}
    </p>
  ) : (
    <p className="holds">
      {withElements(phrase`Holds from ${spot(0)} to ${spot(1)}`, [
        <strong key="from">{held.from}</strong>,
        <strong key="to">{held.to}</strong>,
      ])}
    </p>
  );
};
