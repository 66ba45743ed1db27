import { z } from './z.ts';
import type { Frozen } from './frozen.ts';
import { limits } from './limits.ts';

/** Whether a text is whole base64 (RFC 4648, section 4) of at least one byte. */
const isBase64 = (text: string): boolean =>
  text.length > 0 && text.length % 4 === 0 && /^[A-Za-z0-9+/]*={0,2}$/.test(text);

/** A picture that is kept in the file: what it is, and its bytes in base64. */
export const pictureSchema = z.strictObject({
  type: z.enum(['image/jpeg', 'image/png', 'image/webp']),
  data: z.string().max(limits.pictureText).refine(isBase64, 'base64'),
});

export type Picture = Frozen<z.infer<typeof pictureSchema>>;
