import { phrase } from '../../phrases/phrase.ts';
import { useBench, useSession } from '../bench.ts';
import { themes } from '../../store/session.ts';

const words = { day: phrase`Day`, dark: phrase`Dark`, sun: phrase`Full sun` } as const;

/** The three lights in which the screen can be read. */
export const ThemeSwitch = () => {
  const { session } = useBench();
  const theme = useSession((state) => state.theme);
  return (
    <div className="choices" role="group" aria-label={phrase`Light`}>
      {themes.map((name) => (
        <button
          key={name}
          type="button"
          aria-pressed={name === theme}
          onClick={() => session.setState({ theme: name })}
        >
          {words[name]}
        </button>
      ))}
    </div>
  );
};
