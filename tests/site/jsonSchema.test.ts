import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { jsonSchema } from '../../src/site/jsonSchema.ts';
import { saveSite } from '../../src/site/saveSite.ts';
import { sampleSite } from './sampleSite.ts';

describe('the JSON Schema of a site file', () => {
  const schema = jsonSchema();

  it('says what it is and names no host', () => {
    expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema['$id']).toBe('urn:lathline:site:10');
    expect(schema['title']).toBe('Lathline site, format version 10');
  });

  it('requires every part of the document and allows no other', () => {
    expect(schema['required']).toEqual([
      'format',
      'version',
      'lineage',
      'job',
      'lengths',
      'shop',
      'counting',
      'work',
      'alternatives',
      'offcuts',
      'marks',
      'lines',
      'gates',
      'features',
      'pins',
      'shots',
      'levels',
      'observations',
      'trusts',
      'conditions',
      'acceptances',
      'townRules',
      'origin',
      'underlays',
      'pictures',
      'specs',
      'hardware',
    ]);
    expect(schema['additionalProperties']).toBe(false);
    expect(schema).toMatchObject({
      properties: {
        version: { const: 10 },
        marks: {
          propertyNames: { pattern: '^mark:[A-Za-z0-9-]{1,40}$' },
          additionalProperties: { properties: { x: { minimum: -633_600, maximum: 633_600 } } },
        },
      },
    });
  });

  it('accepts a saved file and refuses one with a wrong id, a missing and an extra field', () => {
    const reader = z.fromJSONSchema(schema);
    const file = JSON.parse(saveSite(sampleSite)) as Record<string, unknown>;
    const { job, ...jobless } = file;
    expect(reader.safeParse(file).success).toBe(true);
    expect(reader.safeParse(jobless).success).toBe(false);
    expect(reader.safeParse({ ...file, extra: job }).success).toBe(false);
    expect(
      reader.safeParse({ ...file, marks: { 7: { x: 0, y: 0, label: '', fixed: false } } }).success,
    ).toBe(false);
  });
});
