import { DxfRecord, type DxfWriter, type Dxfier } from '@tarikjabiri/dxf';
import type { DxfDashes, LineSign } from './dxfLineTypes.ts';

/** What an element of a line has besides its length (public DXF reference, LTYPE group 74). */
const elements = { bare: 0, letters: 2 } as const;

/** Letters turned with the line and centred on the gap, told from its end (public DXF reference, LTYPE). */
const writeSign = (dx: Dxfier, sign: LineSign, gap: number, style: string): void => {
  const { text, height, wide, high } = sign;
  dx.push(74, elements.letters);
  dx.push(75, 0);
  dx.push(340, style);
  dx.push(46, height);
  dx.push(50, 0);
  dx.push(44, -(gap + wide * height) / 2);
  dx.push(45, (-high * height) / 2);
  dx.push(9, text);
};

/**
 * Adds a line type to a file. One with a sign is a complex line type, whose letters are embedded, so that
 * no file of shapes is needed; the library writes plain ones alone.
 */
export const writeLineType = (
  writer: DxfWriter,
  name: string,
  { is, dashes, sign }: DxfDashes,
): void => {
  const record = writer.addLType(name, is, [...dashes]);
  if (sign === undefined) return;
  const style = writer.document.styleStandard.handle;
  const dxfy = (dx: Dxfier): void => {
    DxfRecord.prototype.dxfy.call(record, dx);
    dx.subclassMarker('AcDbLinetypeTableRecord');
    dx.name(name);
    dx.push(70, 0);
    dx.push(3, is);
    dx.push(72, 65);
    dx.push(73, dashes.length);
    dx.push(
      40,
      dashes.reduce((sum, length) => sum + Math.abs(length), 0),
    );
    dashes.forEach((length, n) => {
      dx.push(49, length);
      if (n === sign.gap) writeSign(dx, sign, -length, style);
      else dx.push(74, elements.bare);
    });
  };
  Object.assign(record, { dxfy });
};
