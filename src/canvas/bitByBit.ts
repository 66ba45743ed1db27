/** Work that is done bit by bit, so that the hand is heard between two bits. */
export interface BitByBit {
  readonly done: () => boolean;
  /** Leaves the work as it is; nobody is told of it any more. */
  readonly stop: () => void;
}

/** The first bit may take so long that a common yard is whole with it, the others a part of a frame; milliseconds. */
const [firstBit, laterBits] = [40, 7];

/** Does the steps of some work, the first of them at once, and tells what it came to: at once where that is all. */
export const bitByBit = <T>(
  steps: Generator<undefined, T, undefined>,
  finished: (result: T) => void,
): BitByBit => {
  const state = { over: false };
  const { port1, port2 } = new MessageChannel();
  const end = (): void => {
    state.over = true;
    port1.close();
  };
  const bit = (milliseconds: number): void => {
    const until = performance.now() + milliseconds;
    while (!state.over) {
      const step = steps.next();
      if (step.done === true) {
        end();
        return finished(step.value);
      }
      if (performance.now() >= until) return port2.postMessage(null);
    }
  };
  port1.addEventListener('message', () => bit(laterBits));
  port1.start();
  bit(firstBit);
  return { done: () => state.over, stop: end };
};
