import type { GateLayout } from '../../../engine/layout.ts';
import { setGatePost } from '../../../site/edits/setGatePost.ts';
import type { Gate } from '../../../site/gate.ts';
import { roundPost } from '../../../site/roundPost.ts';
import { gatePostSizes } from '../../../trade/gatePosts.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { pipeSize } from '../../../units/pipeSize.ts';
import { useSite } from '../../bench.ts';
import { PipeField } from '../../fields/PipeField.tsx';
import { postStock } from '../../fields/stock.ts';
import { GatePostFigures } from '../../help/why/GatePostFigures.tsx';
import { Published } from './Published.tsx';
import { useDo } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly gate: Gate;
  readonly laid: GateLayout;
}

/** A row of the table of posts by the leaf, and whether the widest leaf of the gate is in it. */
const rowText = (
  { over, upTo, post, footingDiameter }: (typeof gatePostSizes)[number],
  style: LengthStyle,
  here: boolean,
): string => {
  const [from, to] = [formatLength(over, style), formatLength(upTo, style)];
  const [od, hole] = [pipeSize(post.od, style), formatLength(footingDiameter, style)];
  return here
    ? phrase`leaf over ${from} to ${to}: ${od} OD, hole ${hole} across, as here`
    : phrase`leaf over ${from} to ${to}: ${od} OD, hole ${hole} across`;
};

/** The posts of one gate: those of its build, or its own; with what is published of them by the leaf. */
export const GatePostField = ({ gate, laid }: Props) => {
  const { lengths, lines, specs } = useSite();
  const make = useDo();
  const built = specs[lines[gate.line]?.spec ?? 'spec:']?.gatePost;
  const set = (post: Gate['post']) =>
    make(phrase`Change gate posts`, (was) => setGatePost(was, laid.id, post));
  const widest = inches(Math.max(0, ...laid.leaves.map(({ width }) => width)));
  return (
    <div className="stack">
      <PipeField
        label={phrase`Gate posts`}
        pipe={gate.post}
        from={postStock}
        none={
          built === undefined
            ? phrase`As its build has them`
            : phrase`As its build has them: ${built.label}`
        }
        onChoose={set}
      />
      <Published
        of={phrase`gate posts by the leaf`}
        as="rows"
        figures={gatePostSizes.map((row) => ({
          text: rowText(row, lengths, widest > row.over && widest <= row.upTo),
          source: row.source,
          used: gate.post?.od === row.post.od && gate.post.section === 'round',
          onTake: () => set(roundPost(row.post)),
        }))}
      />
      <GatePostFigures laid={laid} />
    </div>
  );
};
