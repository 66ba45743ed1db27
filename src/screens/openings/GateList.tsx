import { needs, type GateStanding } from '../../engine/sign/standingsOf.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { useLayout, useSite } from '../bench.ts';
import { showRecord } from './asSet/showRecord.ts';
import { needWords } from './needWords.ts';
import { showCard } from './showCard.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Every gate in one line, what wants attention first; it goes to its card or to its set record. */
export const GateList = ({ standings }: { readonly standings: readonly GateStanding[] }) => {
  const { gates, lengths } = useSite();
  const layout = useLayout();
  const ranked = needs.flatMap((need) => standings.filter((one) => one.need === need));
  return (
    <nav aria-label={phrase`Gates, what wants attention first`}>
      <ul className="gate-list">
        {ranked.map(({ id, need }) => {
          const target = layout.gates[id]?.opening.target;
          const name = gates[id]?.label || phrase`Gate`;
          return (
            <li key={id}>
              <button type="button" onClick={() => showCard(id)}>
                <b className={`need ${need}`}>{needWords[need]}</b>
                <span>{name}</span>
                <span>{target !== undefined && formatLength(target, fineStyle(lengths))}</span>
              </button>
              <button
                type="button"
                aria-label={phrase`As set, ${name}`}
                onClick={() => showRecord(id)}
              >
                {phrase`As set`}
              </button>
            </li>
          );
        })}
      </ul>
    </nav>
  );
};
