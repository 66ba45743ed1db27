import type { Receiver } from '../../site/receiver.ts';
import { inches, type Inches } from '../../units/inches.ts';

/**
 * How deep a drop rod may go into its receiver, inches, so that lifted its end is as high above the
 * ground as the bottom of the leaves, `bottom`: what it rises less that. Below zero where it would
 * drag before it is in.
 */
export const rodReach = ({ lift }: Pick<Receiver, 'lift'>, bottom: Inches): Inches =>
  inches(lift - bottom);
