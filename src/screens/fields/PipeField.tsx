import { phrase } from '../../phrases/phrase.ts';
import type { Pipe } from '../../site/pipe.ts';
import type { PostPipe } from '../../site/postPipe.ts';
import { pipeSource } from '../../trade/pipes.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { useSite } from '../bench.ts';
import { ChoiceField } from './ChoiceField.tsx';

interface Props<Made extends Pipe | PostPipe> {
  readonly label: string;
  /** Null where there is none, or none of its own. */
  readonly pipe: Made | null;
  /** What null is called; left out where there has to be a pipe. */
  readonly none?: string;
  /** What is offered, as a document has it. */
  readonly from: readonly Made[];
  readonly onChoose: (pipe: Made | null) => void;
}

const noPipe = 'none';

const isSquare = (pipe: Pipe | PostPipe): boolean => 'section' in pipe && pipe.section === 'square';

const keyOf = (pipe: Pipe | PostPipe): string =>
  [pipe.label, pipe.od, pipe.wall, isSquare(pipe) ? 'square' : 'round'].join(' ');

/** What it is called and what it measures. */
const nameOf = (pipe: Pipe | PostPipe, lengths: LengthStyle): string => {
  const size = pipeSize(pipe.od, lengths);
  const across = isSquare(pipe) ? phrase`${size} square` : phrase`${size} OD`;
  const wall =
    pipe.wall >= pipe.od / 2 ? phrase`solid` : phrase`${pipeSize(pipe.wall, lengths)} wall`;
  return `${pipe.label}: ${across}, ${wall}`;
};

/** A pipe or post of the table by its trade name, with what it measures; one that is not of it stays. */
export const PipeField = <Made extends Pipe | PostPipe>({
  label,
  pipe,
  none,
  from,
  onChoose,
}: Props<Made>) => {
  const { lengths } = useSite();
  const known = pipe === null || from.some((one) => keyOf(one) === keyOf(pipe));
  const pipes = known ? from : [...from, pipe];
  return (
    <ChoiceField
      label={label}
      value={pipe === null ? noPipe : keyOf(pipe)}
      choices={[
        ...(none === undefined ? [] : [{ value: noPipe, label: none }]),
        ...pipes.map((one) => ({ value: keyOf(one), label: nameOf(one, lengths) })),
      ]}
      onChoose={(chosen) => onChoose(pipes.find((one) => keyOf(one) === chosen) ?? null)}
    />
  );
};

/** What a trade name of pipe does not say. */
export const PipeNote = () => <p className="note">{pipeSource.text}</p>;
