import { Resvg } from '@resvg/resvg-wasm';
import { toPng } from '../../../src/exporters/png/toPng.ts';
import { pngParts } from '../png/pngParts.ts';
import { scene } from '../scene.ts';

/** The module starts once in a process: what makes PNGs starts it. */
const started = toPng(scene, pngParts, 72);

/** Why a strict XML parser by other authors does not take an SVG; null where it does. */
export const svgFault = async (svg: string): Promise<string | null> => {
  await started;
  try {
    new Resvg(svg).free();
    return null;
  } catch (fault) {
    return String(fault);
  }
};
