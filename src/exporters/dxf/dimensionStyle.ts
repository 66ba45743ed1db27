import type { DxfDimStyle, DxfWriter } from '@tarikjabiri/dxf';
import type { LengthSystem } from '../../units/lengthStyle.ts';
import type { DxfScale } from './dxfScale.ts';

/** The style that every dimension of a site has. */
export const dimensionStyleName = 'LATHLINE';

/**
 * How lengths are written, as $LUNITS and DIMLUNIT have it (public DXF reference): 2 decimal, 3 feet and
 * decimal inches, 4 feet and inches with fractions.
 */
export const lengthUnits: Readonly<Record<LengthSystem, 2 | 3 | 4>> = {
  feet: 4,
  inches: 2,
  'decimal feet': 3,
  mm: 2,
  m: 2,
};

/** Parts of a dimension in heights of its capitals. */
export const dimensionParts = { gap: 0.5, past: 0.9, clear: 0.7, tick: 0.7 } as const;

/** The style: ticks, lettering over the line, all sizes in units of the file. */
export const dimensionStyle = (
  writer: DxfWriter,
  { each, letter }: DxfScale,
  system: LengthSystem,
): DxfDimStyle => {
  const size = letter * each;
  const { gap, past, clear, tick } = dimensionParts;
  const style = writer.addDimStyle(dimensionStyleName);
  return Object.assign(style, {
    DIMSCALE: 1,
    DIMTXT: size,
    DIMASZ: size,
    DIMTSZ: tick * size,
    DIMEXO: clear * size,
    DIMEXE: past * size,
    DIMGAP: gap * size,
    DIMTAD: 1,
    DIMTIH: 0,
    DIMTOH: 0,
    DIMLUNIT: lengthUnits[system],
    DIMDEC: 4,
    DIMTXSTY: writer.document.styleStandard.handle,
  });
};
