import { pipeSize } from '../../units/pipeSize.ts';
import type { Pipe } from '../../site/pipe.ts';
import { fencePipes } from '../../trade/pipes.ts';
import { useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';

interface Props {
  readonly frame: Pipe | null;
  readonly onChoose: (frame: Pipe | null) => void;
}

const none = 'none';
/** Frames are bent of the thinner pipes; inches. */
const thickest = 3;

/** The pipe of a leaf's frame, by its trade name with what it measures. */
export const FrameField = ({ frame, onChoose }: Props) => {
  const { lengths } = useSite();
  const table: readonly Pipe[] = fencePipes.filter(({ od }) => od < thickest);
  const known = frame === null || table.some(({ label }) => label === frame.label);
  const pipes = known ? table : [...table, frame];
  return (
    <ChoiceField
      label="Frame"
      value={frame?.label ?? none}
      choices={[
        { value: none, label: 'Not said' },
        ...pipes.map(({ label, od }) => ({
          value: label,
          label: `${label}, ${pipeSize(od, lengths)} OD`,
        })),
      ]}
      onChoose={(chosen) => {
        const pipe = pipes.find(({ label }) => label === chosen);
        onChoose(pipe === undefined ? null : { label: pipe.label, od: pipe.od, wall: pipe.wall });
      }}
    />
  );
};
