import type { Table } from '../../../drawing/tables/table.ts';

/** A table of as many columns as there are yards, which scrolls in its own box; the first column stays in sight. */
export const WideTable = ({ table: { title, columns, rows } }: { readonly table: Table }) => (
  <div className="scroll side-by-side" role="region" aria-label={title} tabIndex={0}>
    <table>
      <caption>{title}</caption>
      <thead>
        <tr>
          {columns.map(({ heading, align }, n) => (
            <th key={`${n} ${heading}`} scope="col" className={align}>
              {heading}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([first, ...cells], n) => (
          <tr key={`${n} ${first}`}>
            <th scope="row">{first}</th>
            {cells.map((cell, column) => (
              <td key={columns[column + 1]?.heading ?? column} className="right">
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
