import { phrase } from '../../phrases/phrase.ts';
/** A yard that comes with the program, loaded when it is asked for. */
export interface Sample {
  readonly id: string;
  readonly label: string;
  readonly load: () => Promise<unknown>;
}

const ending = '.site.json';
const found = import.meta.glob('../../../sample-sites/*.site.json', { import: 'default' });

const idOf = (path: string): string => path.slice(path.lastIndexOf('/') + 1, -ending.length);

/** The yards that come with the program, as they are called. */
const names: Readonly<Record<string, string>> = {
  'back-yard': phrase`Back yard`,
  'contractors-yard': phrase`Contractors yard`,
  'corner-lot': phrase`Corner lot`,
  hillside: phrase`Hillside`,
  'long-boundary': phrase`Long boundary`,
  'plant-nursery': phrase`Plant nursery`,
  'sports-court': phrase`Sports court`,
  'taped-yard': phrase`Taped yard`,
  'three-fences': phrase`Three fences`,
};

/** One that has no name is called by its file. */
const labelOf = (id: string): string => {
  const named = names[id];
  if (named !== undefined) return named;
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
};

/** Every yard of `sample-sites/`, by its file's name. */
export const samples: readonly Sample[] = Object.entries(found).map(([path, load]) => ({
  id: idOf(path),
  label: labelOf(idOf(path)),
  load,
}));
