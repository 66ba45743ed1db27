import { describe, expect, it } from 'vitest';
import { jsonSchema } from '../../src/site/jsonSchema.ts';

describe('the JSON Schema of a site file', () => {
  const schema = jsonSchema();

  it('says what it is and names no host', () => {
    expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema['$id']).toBe('urn:lathline:site:1');
    expect(schema['title']).toBe('Lathline site, format version 1');
  });

  it('requires every part of the document and allows no other', () => {
    expect(schema['required']).toEqual([
      'format',
      'version',
      'job',
      'lengths',
      'marks',
      'lines',
      'gates',
      'features',
      'specs',
      'hardware',
    ]);
    expect(schema['additionalProperties']).toBe(false);
    expect(schema).toMatchObject({
      properties: {
        version: { const: 1 },
        marks: {
          propertyNames: { pattern: '^mark:[A-Za-z0-9-]{1,40}$' },
          additionalProperties: { properties: { x: { minimum: -633_600, maximum: 633_600 } } },
        },
      },
    });
  });
});
