import { initWasm, Resvg } from '@resvg/resvg-wasm';

/** A PNG of the program's icon: its file in `src/public/`, its sides in px. */
interface IconSize {
  readonly name: string;
  readonly side: number;
  /** Whether a device cuts it to a shape of its own. */
  readonly cut: boolean;
}

/** 192 and 512 px are what browsers ask for before they offer to install a program. From memory. */
const sizes: readonly IconSize[] = [
  { name: 'icon-192.png', side: 192, cut: false },
  { name: 'icon-512.png', side: 512, cut: false },
  { name: 'icon-maskable-512.png', side: 512, cut: true },
];

/**
 * The drawing with its ground to all edges and the rest inside the circle of 80 % of the width that every
 * shape leaves: W3C Web Application Manifest, maskable icons, safe zone.
 */
const toBeCut = (svg: string): string => {
  const [whole, ground] = /<rect [^>]*fill="([^"]+)"[^>]*\/>/.exec(svg) ?? [];
  if (whole === undefined || ground === undefined) {
    throw new Error('icon: expected a rect with a fill as its ground');
  }
  return svg
    .replace(
      whole,
      `<rect width="16" height="16" fill="${ground}"/><g transform="translate(2.4 2.4) scale(0.7)">`,
    )
    .replace('</svg>', '</g></svg>');
};

/** The icon, drawn on 16 by 16 units, as PNG files by their names. `raster` is the module that rasters. */
export const iconsFrom = async (
  svg: string,
  raster: Uint8Array,
): Promise<ReadonlyMap<string, Uint8Array>> => {
  await initWasm(new Uint8Array(raster));
  return new Map(
    sizes.map(({ name, side, cut }) => {
      const drawing = new Resvg(cut ? toBeCut(svg) : svg, {
        fitTo: { mode: 'width', value: side },
      });
      return [name, drawing.render().asPng()];
    }),
  );
};
