import { z } from './z.ts';
import { signedLength } from './quantities.ts';

/** A place along a leg: so many inches from its start, its end or its middle. */
export const anchorSchema = z.strictObject({
  from: z.enum(['start', 'end', 'middle']),
  offset: signedLength,
});
