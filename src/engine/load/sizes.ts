import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Pipe } from '../../site/pipe.ts';
import type { Size } from '../../trade/countRules.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';

type Arms = NonNullable<FenceSpec['barbedWire']>['arms'];

/** What a counted thing measures: lengths and outside diameters in inches. */
export interface Sizes {
  readonly post?: Inches;
  readonly rail?: Pipe;
  readonly height?: Inches;
  readonly fabric?: { readonly height: Inches; readonly mesh: Inches; readonly wire: Inches };
  readonly arms?: Arms;
}

const codeOf = (size: Size, sizes: Sizes): string | null => {
  const { post, rail, height, fabric, arms } = sizes;
  switch (size) {
    case 'post':
      return post === undefined ? null : String(post);
    case 'rail':
      return rail === undefined ? null : `${rail.od}x${rail.wall}`;
    case 'height':
      return height === undefined ? null : `${height}in`;
    case 'fabric':
      return fabric === undefined ? null : `${fabric.height}in-${fabric.mesh}-${fabric.wire}`;
    case 'arms':
      return arms === undefined ? null : arms.replaceAll(' ', '-');
  }
};

/** Sizes in a form that is the same on every site, whatever it writes lengths in: for price lists. */
export const sizeCodes = (by: readonly Size[], sizes: Sizes): string[] =>
  by.flatMap((size) => codeOf(size, sizes) ?? []);

const wordsOf = (size: Size, sizes: Sizes, style: LengthStyle): string | null => {
  const { post, rail, height, fabric, arms } = sizes;
  switch (size) {
    case 'post':
      return post === undefined ? null : `${pipeSize(post, style)} post`;
    case 'rail':
      return rail === undefined ? null : `${pipeSize(rail.od, style)} rail`;
    case 'height':
      return height === undefined ? null : formatLength(height, style);
    case 'fabric':
      return fabric === undefined
        ? null
        : `${formatLength(fabric.height, style)} high, ${pipeSize(fabric.mesh, style)} mesh of ${pipeSize(fabric.wire, style)} wire`;
    case 'arms':
      return arms ?? null;
  }
};

/** Sizes as the site writes them. */
export const sizeWords = (by: readonly Size[], sizes: Sizes, style: LengthStyle): string[] =>
  by.flatMap((size) => wordsOf(size, sizes, style) ?? []);
