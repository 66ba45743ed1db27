import './help.css';
import { useDeferredValue, useId, useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { SheetOver } from '../frame/SheetOver.tsx';
import { foundOn, keyPage, type PageGroup } from './keys/keyPage.ts';
import { tourSteps } from '../../store/tour.ts';
import { beginTour } from './tour/beginTour.ts';

const Group = ({ title, rows }: PageGroup) => (
  <section aria-label={title}>
    <h3>{title}</h3>
    <dl>
      {rows.map(({ how, does }) => (
        <div key={`${how.join(' ')} ${does}`}>
          <dt>
            {how.map((one) => (
              <kbd key={one}>{one}</kbd>
            ))}
          </dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  </section>
);

const handOf = () => (window.matchMedia('(pointer: coarse)').matches ? 'fingers' : 'keys');

const countText = (count: number): string => {
  if (count === 0) return phrase`Nothing here has these words`;
  return count === 1 ? phrase`1 line` : phrase`${count} lines`;
};

/** Every key and gesture of the program, to be looked through or searched, and the way to the tour. */
export const HelpSheet = ({ onClose }: { readonly onClose: () => void }) => {
  const bench = useBench();
  const id = useId();
  const [text, setText] = useState('');
  const found = foundOn(keyPage(handOf()), useDeferredValue(text));
  const count = found.reduce((sum, { rows }) => sum + rows.length, 0);
  return (
    <SheetOver title={phrase`Help: keys and gestures`} onClose={onClose}>
      <div className="help">
        <div className="help-tour">
          <p>{phrase`The tour shows the way from a first leg to a printed sheet in ${tourSteps.length} small steps, done on your own yard.`}</p>
          <button type="button" className="chief" onClick={() => beginTour(bench)}>
            {phrase`Take the tour`}
          </button>
        </div>
        <div className="field">
          <label htmlFor={id}>{phrase`Find a key or a gesture`}</label>
          <input
            id={id}
            inputMode="search"
            value={text}
            autoComplete="off"
            onChange={(event) => setText(event.target.value)}
          />
          <p className="note" role="status">
            {text.trim() === '' ? '' : countText(count)}
          </p>
        </div>
        {found.map((group) => (
          <Group key={group.title} {...group} />
        ))}
      </div>
    </SheetOver>
  );
};
