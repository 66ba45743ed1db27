import { phrase } from '../phrases/phrase.ts';
import { cautions } from '../trade/cautions.ts';

/** What every sheet says, in full. */
export const Cautions = () => (
  <section className="cautions" aria-label={phrase`Cautions`}>
    <h2>{phrase`Cautions`}</h2>
    <ul>
      {cautions.map(({ text, source }) => (
        <li key={text}>
          {text}
          {source !== null && <small> {source.text}</small>}
        </li>
      ))}
    </ul>
  </section>
);
