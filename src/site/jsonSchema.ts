import { z } from './z.ts';
import { siteSchema, siteVersion } from './site.ts';

/**
 * The JSON Schema (draft 2020-12) of a site file. It cannot say that a reference leads somewhere
 * or that order keys differ; opening a file checks those too.
 */
export const jsonSchema = (): Readonly<Record<string, unknown>> => {
  const { $schema, ...rest } = z.toJSONSchema(siteSchema, { target: 'draft-2020-12' });
  return {
    $schema,
    $id: `urn:lathline:site:${siteVersion}`,
    title: `Lathline site, format version ${siteVersion}`,
    ...rest,
  };
};
