import { exactStyle } from '../../drawing/orders/exactStyle.ts';
import { heldTexts } from '../../drawing/opening/heldTexts.ts';
import type { Opening, Term } from '../../engine/opening.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';

interface Props {
  readonly opening: Opening;
  readonly style: LengthStyle;
  /** Of the gate. */
  readonly name: string;
}

const spreads: Readonly<Record<Term['spread'], string>> = {
  uncertain: 'not sure',
  adjustable: 'can be set',
  catch: 'catches',
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
        aria-label={`Working of the opening, ${name}`}
        tabIndex={0}
      >
        <table>
          <thead>
            <tr>
              <th scope="col">Takes up</th>
              <th scope="col">Low</th>
              <th scope="col">Planned</th>
              <th scope="col">High</th>
              <th scope="col">From</th>
              <th scope="col">Spread</th>
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
              <th scope="row">Opening to hold</th>
              <td />
              <td className="planned">{write(target)}</td>
              <td />
              <td className="source" colSpan={2}>
                inside face to inside face
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
      No opening holds for sure: measure the hinges closer or take a latch with a longer reach.
    </p>
  ) : (
    <p className="holds">
      Holds from <strong>{held.from}</strong> to <strong>{held.to}</strong>
    </p>
  );
};
