import type { Pipe } from '../../site/pipe.ts';
import { fencePipes, pipeSource } from '../../trade/pipes.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { useSite } from '../bench.ts';
import { ChoiceField } from './ChoiceField.tsx';

interface Props {
  readonly label: string;
  /** Null where there is none, or none of its own. */
  readonly pipe: Pipe | null;
  /** What null is called; left out where there has to be a pipe. */
  readonly none?: string;
  /** Pipes of the table that are offered; else all. */
  readonly from?: readonly Pipe[];
  readonly onChoose: (pipe: Pipe | null) => void;
}

const noPipe = 'none';
const keyOf = ({ label, od, wall }: Pipe): string => `${label} ${od} ${wall}`;

/** A pipe of the table by its trade name, with what it measures; one that is not of the table stays. */
export const PipeField = ({ label, pipe, none, from = fencePipes, onChoose }: Props) => {
  const { lengths } = useSite();
  const known = pipe === null || from.some((one) => keyOf(one) === keyOf(pipe));
  const pipes = known ? from : [...from, pipe];
  return (
    <ChoiceField
      label={label}
      value={pipe === null ? noPipe : keyOf(pipe)}
      choices={[
        ...(none === undefined ? [] : [{ value: noPipe, label: none }]),
        ...pipes.map((one) => ({
          value: keyOf(one),
          label: `${one.label}: ${pipeSize(one.od, lengths)} OD, ${pipeSize(one.wall, lengths)} wall`,
        })),
      ]}
      onChoose={(chosen) => {
        const found = pipes.find((one) => keyOf(one) === chosen);
        onChoose(
          found === undefined ? null : { label: found.label, od: found.od, wall: found.wall },
        );
      }}
    />
  );
};

/** What a trade name of pipe does not say. */
export const PipeNote = () => <p className="note">{pipeSource.text}</p>;
