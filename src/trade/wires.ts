import { inches, type Inches } from '../units/inches.ts';
import type { Source } from './source.ts';

/** A wire of fabric by its gauge. */
export interface Wire {
  readonly gauge: string;
  readonly diameter: Inches;
}

export const wireSource: Source = {
  text: 'CLFMI Standard Guide for Metallic-Coated Steel Chain Link Fence Fabric, 4.1',
  status: 'published',
};

const wire = (gauge: string, diameter: number): Wire => ({ gauge, diameter: inches(diameter) });

/** Thick to thin. */
export const wires: readonly Wire[] = [
  wire('6', 0.192),
  wire('9', 0.148),
  wire('11', 0.12),
  wire('11-1/2', 0.113),
];

/** The fabric that is taken where nobody has said: 2 in of 9 gauge; common practice, no published source. */
export const usualFabric = { mesh: inches(2), wire: inches(0.148) };

/** Clear distances between the wires of fabric that are sold, wide to narrow; common practice, no published source. */
export const meshes: readonly Inches[] = [2.25, 2, 1.75, 1.25, 1, 5 / 8, 1 / 2, 3 / 8].map(inches);
