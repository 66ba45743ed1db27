import { loadTable } from '../../drawing/tables/loadTable.ts';
import type { LoadLine, LoadPart } from '../../engine/loadLine.ts';
import { phrase } from '../../phrases/phrase.ts';
import { useBench, useSite } from '../bench.ts';

/** What each part of the list is called. */
const partNames: Readonly<Record<LoadPart, string>> = {
  posts: phrase`Posts`,
  infill: phrase`Between the posts`,
  rails: phrase`Rails`,
  fittings: phrase`Fittings`,
  gates: phrase`Gates`,
  concrete: phrase`Concrete`,
};

interface Props {
  readonly part: LoadPart;
  readonly lines: readonly LoadLine[];
}

const isAnywhere = ({ of }: LoadLine): boolean =>
  of.posts.length + of.lines.length + of.gates.length > 0;

/** One part of the load list; what a line counts can be shown in the yard. */
export const LoadPartView = ({ part, lines }: Props) => {
  const { session } = useBench();
  const site = useSite();
  const own = lines.filter((line) => line.part === part);
  if (own.length === 0) return null;
  const { columns, rows } = loadTable({ lines: own }, site);
  const light = ({ item, of }: LoadLine) => {
    session.setState({ tool: 'select', selection: null, lit: { item, ...of } });
    window.location.hash = '#yard';
  };
  return (
    <section className="scroll list" aria-label={partNames[part]} tabIndex={0}>
      <table>
        <caption>{partNames[part]}</caption>
        <thead>
          <tr>
            {columns.map(({ heading, align }) => (
              <th key={heading} scope="col" className={align}>
                {heading}
              </th>
            ))}
            <th scope="col">{phrase`In the yard`}</th>
          </tr>
        </thead>
        <tbody>
          {own.map((line, n) => (
            <tr key={`${line.code} ${line.each ?? ''}`}>
              {(rows[n] ?? []).map((cell, column) => (
                <td
                  key={columns[column]?.heading}
                  className={columns[column]?.align}
                  data-heading={columns[column]?.heading}
                >
                  {cell}
                </td>
              ))}
              <td data-heading={phrase`In the yard`}>
                {isAnywhere(line) && (
                  <button
                    type="button"
                    aria-label={phrase`Show ${line.item} in the yard`}
                    onClick={() => light(line)}
                  >{phrase`Show`}</button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
