import { useEffect, useRef } from 'react';
import { toolbox } from '../../editor/toolbox.ts';
import { useBench, useSession } from '../bench.ts';

/** Every tool by its name, and the key that takes it up. */
export const Toolbar = () => {
  const { session } = useBench();
  const tool = useSession((state) => state.tool);
  const bar = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // on a phone the tools run off the edge: the one in hand is always to be seen
    const inHand = bar.current?.querySelector('[aria-pressed="true"]');
    inHand?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [tool]);
  return (
    <div ref={bar} className="tools" role="toolbar" aria-label="Tools">
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
