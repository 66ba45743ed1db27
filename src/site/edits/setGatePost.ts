import { entry } from '../entry.ts';
import type { GateId } from '../ids.ts';
import type { PostPipe } from '../postPipe.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/**
 * Gives a gate posts of its own; null takes those of the fence spec. RangeError for an unknown
 * gate, and for a diameter or wall of zero or less.
 */
export const setGatePost = (site: Site, id: GateId, post: PostPipe | null): Site =>
  withGate(site, id, { ...entry(site, 'gates', id), post });
