import { z } from './z.ts';

const tail = z.string().regex(/^[A-Za-z0-9-]{1,40}$/, 'letters, digits and hyphens, 40 at most');

/** Ids say what they name, so that one can be told from another in a file and by the compiler. */
export const markId = z.templateLiteral(['mark:', tail]);
export const vertexId = z.templateLiteral(['vertex:', tail]);
export const lineId = z.templateLiteral(['line:', tail]);
export const gateId = z.templateLiteral(['gate:', tail]);
export const leafId = z.templateLiteral(['leaf:', tail]);
export const featureId = z.templateLiteral(['feature:', tail]);
export const specId = z.templateLiteral(['spec:', tail]);
export const pinId = z.templateLiteral(['pin:', tail]);
export const shotId = z.templateLiteral(['shot:', tail]);
export const levelId = z.templateLiteral(['level:', tail]);
export const observationId = z.templateLiteral(['observation:', tail]);
export const underlayId = z.templateLiteral(['underlay:', tail]);
/** The SHA-256 of the file that a picture came in, and of a PDF which page. */
export const pictureId = z.templateLiteral([
  'picture:',
  z.string().regex(/^[0-9a-f]{64}(-p[1-9][0-9]{0,4})?$/),
]);
export const tieId = z.templateLiteral(['tie:', tail]);
export const acceptanceId = z.templateLiteral(['acceptance:', tail]);
export const townRuleId = z.templateLiteral(['town-rule:', tail]);
export const alternativeId = z.templateLiteral(['alternative:', tail]);
export const offcutId = z.templateLiteral(['offcut:', tail]);
export const hardwareId = z.templateLiteral(['hardware:', tail]);

export type MarkId = `mark:${string}`;
export type VertexId = `vertex:${string}`;
export type LineId = `line:${string}`;
export type GateId = `gate:${string}`;
export type LeafId = `leaf:${string}`;
export type FeatureId = `feature:${string}`;
export type SpecId = `spec:${string}`;
export type PinId = `pin:${string}`;
export type ShotId = `shot:${string}`;
export type LevelId = `level:${string}`;
export type ObservationId = `observation:${string}`;
export type UnderlayId = `underlay:${string}`;
export type PictureId = `picture:${string}`;
export type TieId = `tie:${string}`;
export type AcceptanceId = `acceptance:${string}`;
export type TownRuleId = `town-rule:${string}`;
export type AlternativeId = `alternative:${string}`;
export type OffcutId = `offcut:${string}`;
export type HardwareId = `hardware:${string}`;
