import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** The ground at the meeting edge of two leaves. */
export type RodGround = 'firm soil' | 'loose soil' | 'concrete' | 'paving';
/** What a drop rod drops into. */
export type ReceiverKind = 'driven pipe' | 'drilled' | 'set in concrete';

/** A receiver to begin with, in inches: depth, inside diameter, the rod and how far it lifts. */
export interface ProposedReceiver {
  readonly kind: ReceiverKind;
  readonly ground: RodGround;
  readonly depth: Inches;
  readonly inside: Inches;
  readonly rod: Inches;
  readonly lift: Inches;
  readonly source: Source;
}

/** How deep receivers go, inches: the least in firm ground, the most in loose. */
export const receiverDepth = {
  least: inches(16),
  most: inches(24),
  source: {
    text: phrase`receiver 16 to 24 in deep, deeper in looser ground: common practice, no published source`,
    status: 'practice',
  },
} as const satisfies { least: Inches; most: Inches; source: Source };

/**
 * A conduit is called by its trade size and measured by its inside: 1 in conduit is 1.049 in
 * inside (EMT, ANSI C80.3, from memory), which a rod of 1 in OD would hardly enter.
 */
const conduitInside = inches(1.049);

const rod = inches(0.625);
const lift = inches(6);

const rows: Readonly<Record<RodGround, { kind: ReceiverKind; depth: Inches; why: string }>> = {
  'firm soil': {
    kind: 'driven pipe',
    depth: receiverDepth.least,
    why: phrase`a pipe with its end flattened, driven until it is flush`,
  },
  'loose soil': {
    kind: 'set in concrete',
    depth: receiverDepth.most,
    why: phrase`a driven pipe works loose: a sleeve in concrete, at the deep end of the range`,
  },
  concrete: {
    kind: 'drilled',
    depth: receiverDepth.least,
    why: phrase`a hole drilled through the slab into the ground under it, so that it drains`,
  },
  paving: {
    kind: 'set in concrete',
    depth: receiverDepth.least,
    why: phrase`a sleeve in concrete, flush with the paving`,
  },
};

/** What to begin with in ground of a sort: everything in it can be changed. */
export const receiverFor = (ground: RodGround): ProposedReceiver => {
  const { kind, depth, why } = rows[ground];
  const text = phrase`${why}: common practice, no published source`;
  return {
    kind,
    ground,
    depth,
    inside: conduitInside,
    rod,
    lift,
    source: { text, status: 'practice' },
  };
};

/** A sleeve stands in so much concrete, inches across (10 to 12 in, from memory). */
const sleeveFooting = inches(10);

/** The hole to make for a receiver of an inside diameter, inches across; none is bored for a pipe that is driven. */
export const receiverHole = (
  kind: ReceiverKind,
  inside: Inches,
): { readonly diameter: Inches; readonly source: Source } => {
  if (kind === 'set in concrete') {
    const text = phrase`sleeve in concrete of 10 to 12 in across, top flush: from memory`;
    return { diameter: sleeveFooting, source: { text, status: 'memory' } };
  }
  const text =
    kind === 'drilled'
      ? phrase`as wide as the receiver inside`
      : phrase`no hole is bored: the pipe is driven, as wide as its inside`;
  return { diameter: inside, source: { text, status: 'derived' } };
};
