import { toolbox } from '../../editor/toolbox.ts';
import { isShown } from '../../editor/walk/walk.ts';
import { phrase } from '../../phrases/phrase.ts';
import { useBench, useSession } from '../bench.ts';
import type { Walk } from './walk/useWalk.ts';

/** On a phone the tools run off the edge: the one in hand is always to be seen. */
const show = (button: HTMLButtonElement | null): void =>
  button?.scrollIntoView({ block: 'nearest', inline: 'nearest' });

/** Every tool by its name and the key that takes it up, and the key that starts or stops a walk. */
export const Toolbar = ({ walk }: { readonly walk: Walk }) => {
  const { session } = useBench();
  const tool = useSession((state) => state.tool);
  const walking = isShown(walk.state);
  return (
    <div className="tools" role="toolbar" aria-label={phrase`Tools`}>
      {toolbox.map(({ id, label, key }) => (
        <button
          key={id}
          ref={id === tool ? show : null}
          type="button"
          aria-pressed={id === tool}
          aria-keyshortcuts={key}
          data-point={`tool ${id}`}
          onClick={() => session.setState({ tool: id })}
        >
          {label} <kbd aria-hidden="true">{key.toUpperCase()}</kbd>
        </button>
      ))}
      <button
        type="button"
        aria-pressed={walking}
        onClick={() => (walking ? walk.send({ do: 'stop' }) : walk.start())}
      >
        {phrase`Walk`}
      </button>
    </div>
  );
};
