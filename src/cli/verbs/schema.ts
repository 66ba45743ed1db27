import { jsonSchema } from '../../site/jsonSchema.ts';
import { read } from '../../units/parsed.ts';
import type { Verb } from '../verb.ts';
import { phrase } from '../../phrases/phrase.ts';

/** `schema`: the JSON Schema of a site file, for other programs that read or write one. */
export const schema: Verb = {
  name: 'schema',
  does: phrase`prints the JSON Schema of a site file`,
  places: [],
  options: [],
  run: async () => {
    const json = jsonSchema();
    return read({ text: JSON.stringify(json, null, 2), json, stopped: false });
  },
};
