import './alternatives.css';
import { phrase } from '../../../phrases/phrase.ts';
import { alternativesOf } from '../../../site/alternativesOf.ts';
import { useSite } from '../../bench.ts';
import { AlternativeCard } from './AlternativeCard.tsx';
import { NewAlternative } from './NewAlternative.tsx';
import { SideBySide } from './SideBySide.tsx';

interface Props {
  readonly save: (what: string, content: string) => void;
}

const placeOf = (n: number, count: number): 'only' | 'first' | 'between' | 'last' => {
  if (count === 1) return 'only';
  if (n === 0) return 'first';
  return n === count - 1 ? 'last' : 'between';
};

/** Other ways to build the yard, for a customer to choose from, and what each takes. */
export const Alternatives = ({ save }: Props) => {
  const all = alternativesOf(useSite());
  return (
    <section aria-label={phrase`Other ways to build it`} className="alternatives">
      <h2>{phrase`Other ways to build it`}</h2>
      {all.length === 0 ? (
        <p>{phrase`Give the customer a choice: the same yard with a higher fence, heavier pipe or a lower price. Name another way, say which build takes the place of each, and see them side by side. The plan stays as it is until you take one of them.`}</p>
      ) : (
        <ul className="plain">
          {all.map((alternative, n) => (
            <AlternativeCard
              key={alternative.id}
              alternative={alternative}
              place={placeOf(n, all.length)}
            />
          ))}
        </ul>
      )}
      <NewAlternative />
      {all.length > 0 && <SideBySide save={save} />}
    </section>
  );
};
