import { z } from './z.ts';
import { acceptanceSchema } from './acceptance.ts';
import { alternativeSchema } from './alternative.ts';
import { conditionsSchema } from './conditions.ts';
import { countingSchema } from './counting.ts';
import { featureSchema } from './feature.ts';
import { fenceLineSchema } from './fenceLine.ts';
import { fenceSpecSchema } from './fenceSpec.ts';
import { gateSchema } from './gate.ts';
import { hardwareSchema } from './hardware.ts';
import {
  acceptanceId,
  alternativeId,
  featureId,
  gateId,
  hardwareId,
  lineId,
  markId,
  observationId,
  offcutId,
  pictureId,
  pinId,
  shotId,
  specId,
  townRuleId,
  underlayId,
} from './ids.ts';
import { levelsSchema } from './levels.ts';
import { lineageSchema } from './lineage.ts';
import { markSchema } from './mark.ts';
import { observationSchema } from './observation.ts';
import { offcutSchema } from './offcut.ts';
import { originSchema } from './origin.ts';
import { pictureSchema } from './picture.ts';
import { pinSchema } from './pin.ts';
import { label, positiveLength, remark } from './quantities.ts';
import { shotSchema } from './shot.ts';
import { townRuleSchema } from './townRule.ts';
import { trustsSchema } from './trusts.ts';
import { underlaySchema } from './underlay.ts';
import { workSchema } from './work.ts';
import type { Frozen } from './frozen.ts';

/** The version of the file format that this program writes. */
export const siteVersion = 10;

/**
 * The document: what a person drew and chose, nothing that follows from it. Flat maps by id;
 * no array whose order two people could both change.
 */
export const siteSchema = z.strictObject({
  format: z.literal('lathline site'),
  version: z.literal(siteVersion),
  lineage: lineageSchema,
  job: z.strictObject({
    name: label,
    customer: label,
    place: label,
    drawnBy: label,
    date: label,
    revision: label,
    remark,
  }),
  lengths: z.strictObject({
    system: z.enum(['feet', 'inches', 'decimal feet', 'mm', 'm']),
    fraction: z.union([z.literal(2), z.literal(4), z.literal(8), z.literal(16), z.literal(32)]),
  }),
  /** How the shop makes leaves: their widths come in steps of so many inches. */
  shop: z.strictObject({ leafStep: positiveLength }),
  counting: countingSchema,
  work: workSchema,
  alternatives: z.record(alternativeId, alternativeSchema),
  /** What lies in the company's yard for this job: cut up before anything is bought. */
  offcuts: z.record(offcutId, offcutSchema),
  marks: z.record(markId, markSchema),
  lines: z.record(lineId, fenceLineSchema),
  gates: z.record(gateId, gateSchema),
  features: z.record(featureId, featureSchema),
  pins: z.record(pinId, pinSchema),
  shots: z.record(shotId, shotSchema),
  levels: levelsSchema,
  observations: z.record(observationId, observationSchema),
  trusts: trustsSchema,
  conditions: conditionsSchema,
  acceptances: z.record(acceptanceId, acceptanceSchema),
  /** What the town asks of a fence there, as the company has it. */
  townRules: z.record(townRuleId, townRuleSchema),
  /** Where on earth the point 0, 0 is; the y axis goes north. Null where nobody has said. */
  origin: originSchema.nullable(),
  underlays: z.record(underlayId, underlaySchema),
  /** Pictures of underlays that are kept in this file. */
  pictures: z.record(pictureId, pictureSchema),
  specs: z.record(specId, fenceSpecSchema),
  hardware: z.record(hardwareId, hardwareSchema),
});

export type Site = Frozen<z.infer<typeof siteSchema>>;
