const toCurve = /(?<![a-z])to (?:a |an |the )?[^;]{0,80}?(?<![a-z])curve(?![a-z])/;

/**
 * Where the end of a straight call in small letters begins to say what curve follows it, as in `to the
 * beginning of a curve to the right`, from a place in it on; null where it says nothing of one.
 */
export const curveAhead = (text: string, from: number): number | null => {
  const found = toCurve.exec(text.slice(from));
  return found === null ? null : from + found.index;
};
