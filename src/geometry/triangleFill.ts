/**
 * What the rows of a triangle may fill. Neighbouring columns of which each may fill what the next does,
 * and that one besides, are one front.
 */
export interface TriangleFill {
  /** Where in `columns` the row of each column begins; at last where the last one ends. */
  readonly starts: Int32Array;
  /** The columns that each row may fill, rising: its own, and then later ones. */
  readonly columns: Int32Array;
  /** The first column of each front; at last the number of columns. */
  readonly fronts: Int32Array;
  /** For each column the number of its front. */
  readonly frontOf: Int32Array;
  /**
   * Where in a row of blocks that of each front begins, which has a row for each of its columns, each with a
   * right side; at last where the last one ends.
   */
  readonly blocks: Int32Array;
}

type Rows = Pick<TriangleFill, 'starts' | 'columns'>;

/** Rows one after the other: for each place its own columns, and those of the later places that it may fill. */
const rowsOf = (later: readonly Int32Array[], each: number): Rows => {
  const starts = new Int32Array(later.length * each + 1);
  for (let column = 0; column < later.length * each; column += 1) {
    const own = each - (column % each);
    starts[column + 1] = starts[column]! + own + each * later[Math.floor(column / each)]!.length;
  }
  const columns = new Int32Array(starts.at(-1)!);
  for (let column = 0; column < later.length * each; column += 1) {
    const place = Math.floor(column / each);
    let at = starts[column]!;
    for (let own = column; own < (place + 1) * each; own += 1) columns[at++] = own;
    for (const after of later[place]!)
      for (let n = 0; n < each; n += 1) columns[at++] = after * each + n;
  }
  return { starts, columns };
};

/** Whether the row of a column fills what the next does, and that column besides. */
const leadsOn = ({ starts, columns }: Rows, column: number): boolean => {
  const [own, next, end] = [starts[column]!, starts[column + 1]!, starts[column + 2]!];
  return columns[own + 1] === column + 1 && next - own === end - next + 1;
};

/**
 * The fill of a triangle, by the later places that each may fill, rising: those of the first of them must
 * hold the others, as those of an elimination do. Each place stands for so many columns.
 */
export const triangleFill = (later: readonly Int32Array[], each = 1): TriangleFill => {
  const rows = rowsOf(later, each);
  const size = later.length * each;
  const frontOf = new Int32Array(size);
  const [fronts, blocks]: [number[], number[]] = [[], [0]];
  for (let column = 0; column < size; column += 1) {
    if (column === 0 || !leadsOn(rows, column - 1)) {
      const width = rows.starts[column + 1]! - rows.starts[column]!;
      fronts.push(column);
      blocks.push(blocks.at(-1)! + width * (width + 1));
    }
    frontOf[column] = fronts.length - 1;
  }
  const all = {
    fronts: Int32Array.from([...fronts, size]),
    frontOf,
    blocks: Int32Array.from(blocks),
  };
  return { ...rows, ...all };
};
