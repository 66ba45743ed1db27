import { inches } from '../../src/units/inches.ts';
import { untoldConditions } from '../../src/site/conditions.ts';
import { usualCounting } from '../../src/site/counting.ts';
import { plainWork } from '../../src/site/work.ts';
import type { Site } from '../../src/site/site.ts';
import { usualTrusts } from '../../src/site/trusts.ts';

/** An empty site told from others by the name of its job. */
export const namedSite = (name: string): Site => ({
  format: 'lathline site',
  version: 10,
  lineage: { job: null, saves: {} },
  job: {
    name,
    customer: '',
    place: '',
    drawnBy: '',
    date: '',
    revision: '',
    remark: '',
  },
  lengths: { system: 'feet', fraction: 16 },
  shop: { leafStep: inches(0.125) },
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
  specs: {},
  hardware: {},
});
