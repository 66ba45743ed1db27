import { toolbox } from '../../editor/toolbox.ts';
import { useBench, useSession } from '../bench.ts';

/** On a phone the tools run off the edge: the one in hand is always to be seen. */
const show = (button: HTMLButtonElement | null): void =>
  button?.scrollIntoView({ block: 'nearest', inline: 'nearest' });

/** Every tool by its name, and the key that takes it up. */
export const Toolbar = () => {
  const { session } = useBench();
  const tool = useSession((state) => state.tool);
  return (
    <div className="tools" role="toolbar" aria-label="Tools">
      {toolbox.map(({ id, label, key }) => (
        <button
          key={id}
          ref={id === tool ? show : null}
          type="button"
          aria-pressed={id === tool}
          aria-keyshortcuts={key}
          onClick={() => session.setState({ tool: id })}
        >
          {label} <kbd aria-hidden="true">{key.toUpperCase()}</kbd>
        </button>
      ))}
    </div>
  );
};
