import type { Atom } from './atom.ts';
import type { LayerName } from './layerNames.ts';

/** Atoms of one layer. */
export interface Layer {
  readonly name: LayerName;
  readonly atoms: readonly Atom[];
}
