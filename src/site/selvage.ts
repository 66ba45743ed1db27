import { z } from './z.ts';

/** How the two edges of a fabric are made: wires bent over one another, or twisted to points. */
export const selvages = ['knuckled both edges', 'twisted top edge', 'twisted both edges'] as const;

export const selvageSchema = z.enum(selvages);

export type Selvage = z.infer<typeof selvageSchema>;
