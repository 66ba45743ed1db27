import type { GateLayout } from '../../../engine/layout.ts';
import { setGatePost } from '../../../site/edits/setGatePost.ts';
import type { Gate } from '../../../site/gate.ts';
import { roundPost } from '../../../site/roundPost.ts';
import { gatePostSizes } from '../../../trade/gatePosts.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import { pipeSize } from '../../../units/pipeSize.ts';
import { useSite } from '../../bench.ts';
import { PipeField } from '../../fields/PipeField.tsx';
import { postStock } from '../../fields/stock.ts';
import { Published } from './Published.tsx';
import { useDo } from './useEdit.ts';

interface Props {
  readonly gate: Gate;
  readonly laid: GateLayout;
}

/** The posts of one gate: those of its build, or its own; with what is published of them by the leaf. */
export const GatePostField = ({ gate, laid }: Props) => {
  const { lengths, lines, specs } = useSite();
  const make = useDo();
  const built = specs[lines[gate.line]?.spec ?? 'spec:']?.gatePost;
  const set = (post: Gate['post']) =>
    make('Change gate posts', (was) => setGatePost(was, laid.id, post));
  const widest = inches(Math.max(0, ...laid.leaves.map(({ width }) => width)));
  return (
    <div className="stack">
      <PipeField
        label="Gate posts"
        pipe={gate.post}
        from={postStock}
        none={`As its build has them${built === undefined ? '' : `: ${built.label}`}`}
        onChoose={set}
      />
      <Published
        of="gate posts by the leaf"
        as="rows"
        figures={gatePostSizes.map(({ over, upTo, post, footingDiameter, source }) => ({
          text: `leaf over ${formatLength(over, lengths)} to ${formatLength(upTo, lengths)}: ${pipeSize(post.od, lengths)} OD, hole ${formatLength(footingDiameter, lengths)} across${widest > over && widest <= upTo ? ', as here' : ''}`,
          source,
          used: gate.post?.od === post.od && gate.post.section === 'round',
          onTake: () => set(roundPost(post)),
        }))}
      />
    </div>
  );
};
