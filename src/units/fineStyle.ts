import type { LengthStyle, LengthSystem } from './lengthStyle.ts';

const fine: Readonly<Record<LengthSystem, LengthSystem>> = {
  feet: 'feet',
  inches: 'inches',
  'decimal feet': 'inches',
  mm: 'mm',
  m: 'mm',
};

/**
 * How an opening and what stands in it are written on a site of this style: as all else, but in
 * inches where the site writes hundredths of a foot, which are near 1/8 in and lose it, and in
 * millimetres where it writes metres. A style that is fine already stays as it is.
 */
export const fineStyle = ({ system, fraction }: LengthStyle): LengthStyle => ({
  system: fine[system],
  fraction,
});
