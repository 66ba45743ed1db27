import type { Pipe } from '../../site/pipe.ts';

import { PipeField } from '../fields/PipeField.tsx';
import { pipeStock } from '../fields/stock.ts';
import { phrase } from '../../phrases/phrase.ts';

interface Props {
  readonly frame: Pipe | null;
  readonly onChoose: (frame: Pipe | null) => void;
}

/** Frames are bent of the thinner pipes; inches. */
const thickest = 3;
const thin = pipeStock.filter(({ od }) => od < thickest);

/** The pipe of a leaf's frame, by its trade name with what it measures. */
export const FrameField = ({ frame, onChoose }: Props) => (
  <PipeField
    label={phrase`Frame`}
    pipe={frame}
    none={phrase`Not said`}
    from={thin}
    onChoose={onChoose}
  />
);
