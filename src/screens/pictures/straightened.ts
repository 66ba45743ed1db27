import type { Projective } from '../../geometry/projective.ts';

/** Pixels of a picture, four bytes each: red, green, blue, opacity; row by row from the upper left. */
export interface Pixels {
  readonly data: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
}

/** Writes a pixel from the four of a picture about the point `u`, `v`, weighed by how near each is. */
type Sampler = (u: number, v: number, to: Uint8ClampedArray, at: number) => void;

const samplerOf =
  ({ data, width, height }: Pixels): Sampler =>
  (u, v, to, at) => {
    const left = Math.floor(u);
    const top = Math.floor(v);
    const p = u - left;
    const q = v - top;
    const x0 = left < 0 ? 0 : left;
    const x1 = left + 1 < width ? left + 1 : width - 1;
    const y0 = (top < 0 ? 0 : top) * width;
    const y1 = (top + 1 < height ? top + 1 : height - 1) * width;
    const a = (y0 + x0) * 4;
    const b = (y0 + x1) * 4;
    const c = (y1 + x0) * 4;
    const d = (y1 + x1) * 4;
    const [wa, wb, wc, wd] = [(1 - p) * (1 - q), p * (1 - q), (1 - p) * q, p * q];
    for (let n = 0; n < 4; n += 1) {
      // all four lie in the picture
      to[at + n] = data[a + n]! * wa + data[b + n]! * wb + data[c + n]! * wc + data[d + n]! * wd;
    }
  };

/**
 * A picture of `width` by `height` pixels of which each shows what `toPicture` finds in another picture,
 * between its pixels weighed by how near they are; what lies beside that or beyond its horizon is clear.
 */
export const straightened = (
  picture: Pixels,
  toPicture: Projective,
  { width, height }: Pick<Pixels, 'width' | 'height'>,
): Pixels => {
  const data = new Uint8ClampedArray(width * height * 4);
  const sample = samplerOf(picture);
  const [a, b, c, d, e, f, g, h, i] = toPicture;
  for (let row = 0; row < height; row += 1) {
    const y = row + 0.5;
    for (let column = 0; column < width; column += 1) {
      const x = column + 0.5;
      const depth = g * x + h * y + i;
      if (depth <= 0) continue;
      const u = (a * x + b * y + c) / depth;
      const v = (d * x + e * y + f) / depth;
      if (u < 0 || v < 0 || u > picture.width || v > picture.height) continue;
      // pixels are told by their middles
      sample(u - 0.5, v - 0.5, data, (row * width + column) * 4);
    }
  }
  return { data, width, height };
};
