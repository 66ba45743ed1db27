import { z } from './z.ts';
import type { Frozen } from './frozen.ts';

/** A place on earth in degrees (WGS 84): latitude north, longitude east of Greenwich above zero. */
export const originSchema = z.strictObject({
  latitude: z.number().min(-89).max(89),
  longitude: z.number().min(-180).max(180),
});

export type Origin = Frozen<z.infer<typeof originSchema>>;
