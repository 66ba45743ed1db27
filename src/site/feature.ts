import { z } from 'zod';
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

/** A buried or overhead service. `width` and `tolerance` (each side) in inches. */
const utility = z.strictObject({
  kind: z.literal('utility'),
  label,
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
export const featureSchema = z.discriminatedUnion('kind', [area, boundary, utility, tree, note]);

export type Feature = Frozen<z.infer<typeof featureSchema>>;
export type FeatureKind = Feature['kind'];

type Without<T, Keys extends PropertyKey> = T extends unknown ? Omit<T, Keys> : never;
type SomeOf<T> = T extends unknown ? Partial<T> : never;

/** A feature but for the marks that it stands on. */
export type FeatureFields = Without<Feature, 'path' | 'mark'>;
/** Fields of a feature of one kind that can be changed. */
export type FeatureChange = SomeOf<Without<FeatureFields, 'kind'>>;
