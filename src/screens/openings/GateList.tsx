import { needs, type GateStanding } from '../../engine/sign/standingsOf.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { useLayout, useSite } from '../bench.ts';
import { needWords } from './needWords.ts';
import { showCard } from './showCard.ts';

/** Every gate in one line, what wants attention first; pressing one goes to its card. */
export const GateList = ({ standings }: { readonly standings: readonly GateStanding[] }) => {
  const { gates, lengths } = useSite();
  const layout = useLayout();
  const ranked = needs.flatMap((need) => standings.filter((one) => one.need === need));
  return (
    <nav aria-label="Gates, what wants attention first">
      <ul className="gate-list">
        {ranked.map(({ id, need }) => {
          const target = layout.gates[id]?.opening.target;
          return (
            <li key={id}>
              <button type="button" onClick={() => showCard(id)}>
                <b className={`need ${need}`}>{needWords[need]}</b>
                <span>{gates[id]?.label || 'Gate'}</span>
                <span>{target !== undefined && formatLength(target, fineStyle(lengths))}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </nav>
  );
};
