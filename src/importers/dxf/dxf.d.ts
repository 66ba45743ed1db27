/** What we use of the library that reads DXF; it has no types of its own. */
declare module 'dxf' {
  export interface DxfVertex {
    readonly x?: number;
    readonly y?: number;
    readonly z?: number;
    /** The tangent of a quarter of the arc to the next vertex, above 0 counter-clockwise. */
    readonly bulge?: number;
  }
  export interface DxfEntity extends DxfVertex {
    readonly type: string;
    readonly layer?: string;
    readonly paperSpace?: number;
    readonly extrusionX?: number;
    readonly extrusionY?: number;
    readonly extrusionZ?: number;
    readonly start?: DxfVertex;
    readonly end?: DxfVertex;
    readonly vertices?: readonly DxfVertex[];
    readonly closed?: boolean;
    readonly polygonMesh?: boolean;
    readonly polyfaceMesh?: boolean;
    readonly r?: number;
    /** Radians. */
    readonly startAngle?: number;
    readonly endAngle?: number;
    readonly string?: string;
    readonly block?: string;
    readonly scaleX?: number;
    readonly scaleY?: number;
    /** Degrees. */
    readonly rotation?: number;
    readonly columnCount?: number;
    readonly rowCount?: number;
    readonly columnSpacing?: number;
    readonly rowSpacing?: number;
  }
  export interface DxfBlock {
    readonly name?: string;
    readonly x?: number;
    readonly y?: number;
    readonly entities?: readonly DxfEntity[];
  }
  export interface DxfLayerRow {
    readonly name?: string;
    readonly flags?: number;
    /** Below 0 for a layer that is off. */
    readonly colorNumber?: number;
  }
  export interface Dxf {
    readonly header: { readonly insUnits?: number };
    readonly tables?: { readonly layers?: Readonly<Record<string, DxfLayerRow>> };
    readonly blocks: readonly DxfBlock[];
    readonly entities: readonly DxfEntity[];
  }
  export const parseString: (text: string) => Dxf;
}
