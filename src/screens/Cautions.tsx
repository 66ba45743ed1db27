import { cautions } from '../trade/cautions.ts';

/** What every sheet says, in full. */
export const Cautions = () => (
  <section className="cautions" aria-label="Cautions">
    <h2>Cautions</h2>
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
