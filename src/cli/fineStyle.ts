import type { LengthStyle } from '../units/lengthStyle.ts';

/**
 * How lengths to cut are written on a site: hundredths of a foot and thousandths of a metre would
 * hide what decides, so those give way to inches and millimetres.
 */
export const fineStyle = ({ system, fraction }: LengthStyle): LengthStyle => {
  if (system === 'decimal feet') return { system: 'inches', fraction };
  return { system: system === 'm' ? 'mm' : system, fraction };
};

/** How leaves, hinges, openings and holes are written: by the inch or by the millimetre. */
export const partStyle = (style: LengthStyle): LengthStyle =>
  style.system === 'feet' ? { ...style, system: 'inches' } : fineStyle(style);
