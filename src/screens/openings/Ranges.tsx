import { heldTexts } from '../../drawing/opening/heldTexts.ts';
import { rangeEnds, ranges, rangeTable, type Range } from '../../drawing/tables/rangeTable.ts';
import type { Opening } from '../../engine/opening.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { TableView } from '../TableView.tsx';
import { phrase } from '../../phrases/phrase.ts';

interface Props {
  readonly opening: Opening;
  readonly style: LengthStyle;
  /** Of the gate. */
  readonly name: string;
}

const words: Readonly<Record<Range, string>> = {
  sure: phrase`Holds for sure`,
  possible: phrase`May hold`,
  statistical: phrase`Statistical (root sum of squares)`,
};

const meanings: Readonly<Record<Range, string>> = {
  sure: phrase`Whatever the true size of each unsure part: for the lower end all of them at their largest, for the upper all at their smallest.`,
  possible: phrase`Outside of this it holds for no size of the unsure parts: for the lower end all of them at their smallest, for the upper all at their largest.`,
  statistical: phrase`Supposes that the unsure parts err independently and about their middle; a wide part and a narrow one then even out. It is no promise for one gate.`,
};

/** The three ranges of an opening, each with what it means and what is added up folded behind it. */
export const Ranges = ({ opening, style, name }: Props) => (
  <div className="ranges">
    <h3>{phrase`From where to where`}</h3>
    {ranges.map((range) => {
      const [holdsFrom, holdsTo] = rangeEnds(opening, range);
      const table = rangeTable(opening, range, { ...fineStyle(style), fraction: 32 });
      const held = heldTexts({ ...opening, holdsFrom, holdsTo }, style);
      return (
        <details key={range} className="more">
          <summary>
            {words[range]}: {held === null ? phrase`nowhere` : phrase`${held.from} to ${held.to}`}
          </summary>
          <p className="note">{meanings[range]}</p>
          <TableView table={{ ...table, title: `${table.title}, ${name}` }} />
        </details>
      );
    })}
  </div>
);
