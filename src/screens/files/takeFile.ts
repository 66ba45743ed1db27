import { fileKind } from '../../importers/fileKind.ts';
import type { Bench } from '../bench.ts';
import { bringPicture, isPdf, isPicture } from '../pictures/bringPicture.ts';
import { openFile } from './openFile.ts';
import { openSheet } from './openSheet.ts';

/** What says that a JSON text is a site of ours, or GeoJSON; a site says so somewhere in it. */
const ours = /"format"\s*:\s*"lathline site"/;
const geo =
  /"type"\s*:\s*"(?:FeatureCollection|Feature|Polygon|MultiPolygon|(?:Multi)?LineString|(?:Multi)?Point|GeometryCollection)"/;

const isGeoJson = async (file: File): Promise<boolean> => {
  if (!/\.json$/i.test(file.name)) return true;
  try {
    const text = await file.text();
    return !ours.test(text) && geo.test(text);
  } catch {
    return false;
  }
};

/** Whether a text that was handed over from another device is a site of ours. */
const isOursAsText = async (file: File): Promise<boolean> => {
  if (!/\.site\.json\.txt$/i.test(file.name)) return false;
  try {
    return ours.test(await file.text());
  } catch {
    return false;
  }
};

/**
 * A file that was chosen or dropped anywhere: a site file is opened, and so is a PDF that carries one; a
 * picture or another PDF comes under the drawing, a file of another program waits on the sheet that brings it
 * in.
 */
export const takeFile = async (bench: Bench, file: File): Promise<void> => {
  if (await isPicture(file)) {
    if ((await isPdf(file)) && (await openSheet(bench, file))) return;
    return bringPicture(bench, file);
  }
  if (await isOursAsText(file)) return openFile(bench, file);
  const kind = fileKind(file.name);
  if (kind.ok && (kind.value !== 'geojson' || (await isGeoJson(file)))) {
    bench.bring.setState(file, true);
    return;
  }
  await openFile(bench, file);
};
