import type { Table } from '../drawing/tables/table.ts';

/**
 * A table as the sheets print it, on the screen; it scrolls sideways where it is too wide. On a
 * phone the words of a row stand under its figures.
 */
export const TableView = ({ table }: { readonly table: Table }) => (
  <div className="scroll list" role="region" aria-label={table.title} tabIndex={0}>
    <table>
      <caption>{table.title}</caption>
      <thead>
        <tr>
          {table.columns.map(({ heading, align }) => (
            <th key={heading} scope="col" className={align}>
              {heading}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {table.rows.map((row, n) => (
          <tr key={`${n} ${row.join(' ')}`}>
            {row.map((cell, column) => (
              <td
                key={table.columns[column]?.heading}
                className={table.columns[column]?.align}
                data-heading={table.columns[column]?.heading}
              >
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
