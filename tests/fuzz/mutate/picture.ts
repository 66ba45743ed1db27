import type { ByteMutation } from './mutation.ts';

/** Sizes and lengths as pictures have them: four or two bytes at the end of what they can be. */
export const pictureMutation: ByteMutation = (bytes, random) => {
  const changed = bytes.slice();
  const value = random.pick([
    [0, 0, 0, 0],
    [0xff, 0xff, 0xff, 0xff],
    [0x7f, 0xff, 0xff, 0xff],
    [0, 0, 0, 1],
    [0, 2],
    [0xff, 0xf4],
  ]);
  changed.set(
    value.slice(0, Math.max(0, changed.length)),
    random.below(Math.max(1, changed.length - 4)),
  );
  return changed;
};
