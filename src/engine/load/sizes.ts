import { slug } from './slug.ts';
import type { PostGirth } from '../posts/postGirth.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Selvage } from '../../site/selvage.ts';
import type { Pipe } from '../../site/pipe.ts';
import type { Size } from '../../trade/countRules.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { phrase } from '../../phrases/phrase.ts';

type Arms = NonNullable<FenceSpec['barbedWire']>['arms'];

/** What a counted thing measures: lengths and outside diameters in inches. */
export interface Sizes {
  readonly post?: PostGirth;
  readonly rail?: Pipe;
  readonly height?: Inches;
  /** A board or panel by its name and width. */
  readonly board?: { readonly label: string; readonly width: Inches };
  readonly fabric?: {
    readonly height: Inches;
    readonly mesh: Inches;
    readonly wire: Inches;
    readonly selvage: Selvage | null;
  };
  readonly arms?: Arms;
}

/** Only where it is said: fabric of which nobody says it keeps its code. */
const selvageCode = (selvage: Selvage | null): string[] =>
  selvage === null ? [] : [slug(selvage)];

const codeOf = (size: Size, sizes: Sizes): string | null => {
  const { post, rail, height, board, fabric, arms } = sizes;
  switch (size) {
    case 'post':
      return post === undefined ? null : `${post.od}${post.section === 'square' ? '-square' : ''}`;
    case 'rail':
      return rail === undefined ? null : `${rail.od}x${rail.wall}`;
    case 'height':
      return height === undefined ? null : `${height}in`;
    case 'board':
      return board === undefined
        ? null
        : [slug(board.label), `${board.width}in`].filter(Boolean).join('-');
    case 'fabric':
      return fabric === undefined
        ? null
        : [`${fabric.height}in-${fabric.mesh}-${fabric.wire}`, ...selvageCode(fabric.selvage)].join(
            '-',
          );
    case 'arms':
      return arms === undefined ? null : arms.replaceAll(' ', '-');
  }
};

/** Sizes in a form that is the same on every site, whatever it writes lengths in: for price lists. */
export const sizeCodes = (by: readonly Size[], sizes: Sizes): string[] =>
  by.flatMap((size) => codeOf(size, sizes) ?? []);

const selvageWords: Readonly<Record<Selvage, string>> = {
  'knuckled both edges': phrase`knuckled both edges`,
  'twisted top edge': phrase`twisted top edge`,
  'twisted both edges': phrase`twisted both edges`,
};

const armWords: Readonly<Record<Arms, string>> = {
  upright: phrase`upright`,
  outward: phrase`outward`,
  inward: phrase`inward`,
  'both ways': phrase`both ways`,
};

const wordsOf = (size: Size, sizes: Sizes, style: LengthStyle): string | null => {
  const { post, rail, height, board, fabric, arms } = sizes;
  switch (size) {
    case 'post':
      return post === undefined
        ? null
        : post.section === 'square'
          ? phrase`${pipeSize(post.od, style)} square post`
          : phrase`${pipeSize(post.od, style)} post`;
    case 'rail':
      return rail === undefined ? null : phrase`${pipeSize(rail.od, style)} rail`;
    case 'height':
      return height === undefined ? null : formatLength(height, style);
    case 'board':
      return board === undefined
        ? null
        : [board.label, phrase`${formatLength(board.width, style)} wide`]
            .filter(Boolean)
            .join(', ');
    case 'fabric':
      return fabric === undefined
        ? null
        : phrase`${formatLength(fabric.height, style)} high, ${pipeSize(fabric.mesh, style)} mesh of ${pipeSize(fabric.wire, style)} wire${fabric.selvage === null ? '' : `, ${selvageWords[fabric.selvage]}`}`;
    case 'arms':
      return arms === undefined ? null : armWords[arms];
  }
};

/** Sizes as the site writes them. */
export const sizeWords = (by: readonly Size[], sizes: Sizes, style: LengthStyle): string[] =>
  by.flatMap((size) => wordsOf(size, sizes, style) ?? []);
