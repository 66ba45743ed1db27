/** Entities that come in as lines, and the group codes of their heights. */
const lineTypes = new Set(['LINE', 'LWPOLYLINE', 'POLYLINE', 'ARC', 'CIRCLE']);
const heightCodes = new Set([30, 31, 38]);

/** What a polyline goes on with. */
const within = new Set(['VERTEX', 'SEQEND']);

/**
 * How many lines of a DXF have a height, which a plan does not keep. `lines` are those of the file, a
 * group code and its value in turn.
 */
export const raisedLines = (lines: readonly string[]): number => {
  let [count, level] = [0, false];
  for (let n = 0; n + 1 < lines.length; n += 2) {
    const [code, value] = [Number(lines[n]), lines[n + 1] ?? ''];
    if (code === 0 && !within.has(value.trim())) level = lineTypes.has(value.trim());
    else if (level && heightCodes.has(code) && (parseFloat(value) || 0) !== 0) {
      count += 1;
      level = false;
    }
  }
  return count;
};
