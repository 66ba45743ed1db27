import { toolbox } from '../../editor/toolbox.ts';
import { useBench, useSession } from '../bench.ts';

/** Every tool by its name, and the key that takes it up. */
export const Toolbar = () => {
  const { session } = useBench();
  const tool = useSession((state) => state.tool);
  return (
    <div className="tools" role="toolbar" aria-label="Tools">
      {toolbox.map(({ id, label, key }) => (
        <button
          key={id}
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
