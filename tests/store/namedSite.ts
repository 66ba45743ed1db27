import type { Site } from '../../src/site/site.ts';

/** An empty site told from others by the name of its job. */
export const namedSite = (name: string): Site => ({
  format: 'lathline site',
  version: 1,
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
  marks: {},
  lines: {},
  gates: {},
  features: {},
  specs: {},
  hardware: {},
});
