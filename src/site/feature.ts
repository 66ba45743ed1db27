import { z } from './z.ts';
import { markId } from './ids.ts';
import { pathSchema } from './path.ts';
import { label, length, remark } from './quantities.ts';
import type { Frozen } from './frozen.ts';

/** Ground with an edge all round: the path is closed. */
const area = z.strictObject({
  kind: z.enum(['building', 'paving', 'pool', 'keep-out']),
  label,
  path: pathSchema,
});

const boundary = z.strictObject({
  kind: z.literal('boundary'),
  label,
  closed: z.boolean(),
  /** How far inside of it a fence has to stand, in inches, as local rules ask; 0 for not at all. */
  setback: length,
  path: pathSchema,
});

/**
 * Ground on which nothing may stand higher than so, as at a corner that drivers have to see round. Heights
 * in inches over the ground: of what one cannot see through, and of open fence.
 */
const heightZone = z.strictObject({
  kind: z.literal('height zone'),
  label,
  of: z.enum(['sight triangle', 'front yard']),
  solid: length,
  open: length,
  path: pathSchema,
});

/**
 * A service. `width` and `tolerance` (each side) in inches: of a buried one no hole may come as near; an
 * overhead one closes no ground.
 */
const utility = z.strictObject({
  kind: z.literal('utility'),
  label,
  run: z.enum(['buried', 'overhead']),
  service: z.enum(['electric', 'gas', 'communication', 'water', 'reclaimed', 'sewer']),
  width: length,
  tolerance: length,
  path: pathSchema,
});

/** A tree at a mark; radius of trunk and of the roots to stay out of, in inches. */
const tree = z.strictObject({
  kind: z.literal('tree'),
  label,
  mark: markId,
  trunk: length,
  roots: length,
});

const note = z.strictObject({ kind: z.literal('note'), label, mark: markId, text: remark });

/** What else is on the ground: everything in the yard that is not fence or gate. */
export const featureSchema = z.discriminatedUnion('kind', [
  area,
  boundary,
  heightZone,
  utility,
  tree,
  note,
]);

export type Feature = Frozen<z.infer<typeof featureSchema>>;
export type FeatureKind = Feature['kind'];

type Without<T, Keys extends PropertyKey> = T extends unknown ? Omit<T, Keys> : never;
type SomeOf<T> = T extends unknown ? Partial<T> : never;

/** A feature but for the marks that it stands on. */
export type FeatureFields = Without<Feature, 'path' | 'mark'>;
/** Fields of a feature of one kind that can be changed. */
export type FeatureChange = SomeOf<Without<FeatureFields, 'kind'>>;
