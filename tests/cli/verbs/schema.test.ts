import { describe, expect, it } from 'vitest';
import { runLath } from '../../../src/cli/runLath.ts';
import { siteSchema } from '../../../src/site/site.ts';
import { memoryIo } from '../memoryIo.ts';

describe('lath schema', () => {
  it('prints one JSON Schema that names every field of a site, with or without --json', async () => {
    const [plain, json] = [memoryIo(), memoryIo()];
    expect(await runLath(['schema'], plain.io)).toBe(0);
    expect(await runLath(['schema', '--json'], json.io)).toBe(0);
    const schema = JSON.parse(plain.printed.out) as { $schema: string; properties: object };
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(Object.keys(schema.properties).toSorted()).toEqual(
      Object.keys(siteSchema.shape).toSorted(),
    );
    expect(json.printed.out).toBe(plain.printed.out);
  });
});
