import type { LineLayout } from '../../../engine/layout.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { setHook } from '../../../site/edits/setHook.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useLayout, useSession, useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { useDo, useEdit } from '../cards/useEdit.ts';
import { gateReading, moveToReading } from './gateReading.ts';

interface Props {
  readonly line: LineLayout;
  readonly open: boolean;
  readonly onOpen: () => void;
  /** Whether the ground is shown under the tape; null where there is none to show. */
  readonly profile: 'shown' | 'folded' | null;
  readonly onProfile: () => void;
}

/** What the tape shows, which end is hooked, and the reading of the selected gate. */
export const TapeHead = ({ line, open, onOpen, profile, onProfile }: Props) => {
  const site = useSite();
  const layout = useLayout();
  const selection = useSession((state) => state.selection);
  const edit = useEdit();
  const make = useDo();
  const fence = site.lines[line.id];
  const gate = selection?.kind === 'gate' ? selection.id : null;
  const reading = gate === null ? null : gateReading(site, line, gate);
  const hook = fence?.hook ?? 'start';
  const post = gate === null ? undefined : layout.gates[gate]?.posts?.[hook];
  const tag = post === undefined ? '' : (layout.posts.get(post)?.tag ?? '');
  return (
    <div className="tape-head">
      <b>{fence === undefined || fence.label === '' ? phrase`Fence line` : fence.label}</b>
      <span className="tape-length">{formatLength(line.length, site.lengths)}</span>
      {gate !== null && reading !== null && (
        <LengthField
          label={phrase`Reading at post ${tag}`}
          value={reading.reading}
          style={site.lengths}
          onEnter={(wanted) =>
            edit(phrase`Move gate to reading`, (was) => moveToReading(was, gate, reading, wanted))
          }
        />
      )}
      <div className="choices">
        <button
          type="button"
          data-point="hook"
          onClick={() =>
            make(phrase`Hook tape at the other end`, (was) =>
              setHook(was, line.id, hook === 'start' ? 'end' : 'start'),
            )
          }
        >
          {phrase`Hook other end`}
        </button>
        {profile !== null && (
          <button type="button" aria-pressed={profile === 'shown'} onClick={onProfile}>
            {phrase`Profile`}
          </button>
        )}
        <button type="button" aria-expanded={open} onClick={onOpen}>
          {open ? phrase`Roll up` : phrase`Pull out tape`}
        </button>
      </div>
    </div>
  );
};
