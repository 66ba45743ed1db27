import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** A length of how posts are set on concrete, inches. */
export interface WallSet {
  readonly length: Inches;
  readonly source: Source;
}

const rockCore: Source = {
  text: phrase`MIL-HDBK-1013/10, glossary: in rock a core 1 in larger than the post, 12 in deep, grouted; here for concrete`,
  status: 'published',
};

const practice = (text: string): Source => ({
  text: phrase`${text}: common practice, no published source`,
  status: 'practice',
});

/** How deep a hole is drilled into concrete for a post. */
export const coreDepth: WallSet = { length: inches(12), source: rockCore };

/** How much wider than the post such a hole is. */
export const coreRoom: WallSet = { length: inches(1), source: rockCore };

/** The least concrete left between such a hole and a face or a step of its wall. */
export const coreCover: WallSet = {
  length: inches(2.5),
  source: practice(phrase`at least 2 1/2 in of concrete beside a core`),
};

/** The side of the square plate under a post. */
export const plateSide: WallSet = {
  length: inches(8),
  source: practice(phrase`a plate 8 in square`),
};

/** Anchors for one plate. */
export const plateAnchors: { readonly count: number; readonly source: Source } = {
  count: 4,
  source: practice(phrase`an anchor in each corner of a plate`),
};
