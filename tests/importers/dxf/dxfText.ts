type Pair = readonly [code: number, value: number | string];

/** An entity of a DXF as text: its type, its layer, and the group codes behind them. */
export const entity = (type: string, layer: string, ...pairs: readonly Pair[]): string =>
  [[0, type] as const, [8, layer] as const, ...pairs]
    .map(([code, value]) => `${code}\n${value}\n`)
    .join('');

/** A straight line. */
export const line = (
  layer: string,
  ...[x1, y1, x2, y2]: readonly [number, number, number, number]
): string => entity('LINE', layer, [10, x1], [20, y1], [11, x2], [21, y2]);

/** A block by its name, its base point and what is in it. */
export const block = (
  name: string,
  [x, y]: readonly [number, number],
  ...inside: readonly string[]
): string =>
  `0\nBLOCK\n8\n0\n2\n${name}\n70\n0\n10\n${x}\n20\n${y}\n${inside.join('')}0\nENDBLK\n8\n0\n`;

interface Whole {
  readonly units?: number;
  readonly layers?: readonly (readonly [name: string, flags: number, colour: number])[];
  readonly blocks?: readonly string[];
  readonly entities: readonly string[];
}

const section = (name: string, inside: string): string =>
  `0\nSECTION\n2\n${name}\n${inside}0\nENDSEC\n`;

const layerTable = (layers: NonNullable<Whole['layers']>): string =>
  [
    `0\nTABLE\n2\nLAYER\n70\n${layers.length}\n`,
    ...layers.map(([name, flags, colour]) => `0\nLAYER\n2\n${name}\n70\n${flags}\n62\n${colour}\n`),
    '0\nENDTAB\n',
  ].join('');

/** A whole DXF as text: a header with its units, its layers, its blocks and its entities. */
export const dxfText = ({ units, layers = [], blocks = [], entities }: Whole): string =>
  [
    units === undefined ? '' : section('HEADER', `9\n$INSUNITS\n70\n${units}\n`),
    layers.length === 0 ? '' : section('TABLES', layerTable(layers)),
    blocks.length === 0 ? '' : section('BLOCKS', blocks.join('')),
    section('ENTITIES', entities.join('')),
    '0\nEOF\n',
  ].join('');
