import { inches } from '../units/inches.ts';
import { untoldConditions } from './conditions.ts';
import { plainWork } from './work.ts';
import { usualCounting } from './counting.ts';
import { newLineage } from './lineage.ts';
import { siteVersion } from './site.ts';
import { usualTrusts } from './trusts.ts';
import type { Site } from './site.ts';

/**
 * A site with nothing drawn: the fence specs and hardware that it is given, lengths in feet and
 * inches to 1/8 in, leaves in steps of 1/8 in.
 */
export const emptySite = ({ specs, hardware }: Pick<Site, 'specs' | 'hardware'>): Site => ({
  format: 'lathline site',
  version: siteVersion,
  lineage: newLineage,
  job: { name: '', customer: '', place: '', drawnBy: '', date: '', revision: '', remark: '' },
  lengths: { system: 'feet', fraction: 8 },
  shop: { leafStep: inches(1 / 8) },
  counting: usualCounting,
  work: plainWork,
  alternatives: {},
  offcuts: {},
  marks: {},
  lines: {},
  gates: {},
  features: {},
  pins: {},
  shots: {},
  levels: { allowable: null, notes: {} },
  observations: {},
  trusts: usualTrusts,
  conditions: untoldConditions,
  acceptances: {},
  townRules: {},
  origin: null,
  underlays: {},
  pictures: {},
  specs,
  hardware,
});
