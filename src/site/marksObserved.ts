import type { MarkId } from './ids.ts';
import type { Observation } from './observation.ts';

/** The marks of an observation, by what each of them is in it. */
export const marksObserved = (observation: Observation): Readonly<Record<string, MarkId>> => {
  switch (observation.kind) {
    case 'tape':
    case 'bearing': {
      const { from, to } = observation;
      return { from, to };
    }
    case 'square':
    case 'straight':
    case 'offset': {
      const { at, from, to } = observation;
      return { at, from, to };
    }
    case 'parallel': {
      const { at, other, from, to } = observation;
      return { at, other, from, to };
    }
    case 'fix':
      return { mark: observation.mark };
  }
};
