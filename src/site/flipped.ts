import type { Anchored } from './anchoredOn.ts';
import { flippedAnchor, flippedGate } from './flippedGate.ts';
import type { VertexId } from './ids.ts';

/** A gate or pin told from the other end of its leg, filed under `leg` where it then starts. */
export const flipped = <Thing extends Anchored>(thing: Thing, leg: VertexId): Thing =>
  ('leaves' in thing
    ? flippedGate(thing, leg)
    : { ...thing, leg, anchor: flippedAnchor(thing.anchor) }) as Thing;
