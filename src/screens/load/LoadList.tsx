import { useLayout, useSite } from '../bench.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LoadLine } from '../../engine/loadLine.ts';
import type { Site } from '../../site/site.ts';
import { inches } from '../../units/inches.ts';

const amount = ({ count, unit }: LoadLine, { lengths }: Site): string => {
  if (unit === 'length') return formatLength(inches(count), lengths);
  return unit === 'each' ? String(count) : `${Number(count.toFixed(1))} cu ft`;
};

/** The screen that says what goes on the truck, each count with its rule. */
export const LoadList = () => {
  const site = useSite();
  const { load } = useLayout();
  return (
    <div className="page">
      <table>
        <tbody>
          {load.map((line, n) => (
            <tr key={`${n} ${line.item}`}>
              <th scope="row">{line.item}</th>
              <td>{amount(line, site)}</td>
              <td>{line.rule}</td>
              <td>{line.source}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};
