/** A yard that comes with the program, loaded when it is asked for. */
export interface Sample {
  readonly id: string;
  readonly label: string;
  readonly load: () => Promise<unknown>;
}

const ending = '.site.json';
const found = import.meta.glob('../../../sample-sites/*.site.json', { import: 'default' });

const idOf = (path: string): string => path.slice(path.lastIndexOf('/') + 1, -ending.length);

const labelOf = (id: string): string => {
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
};

/** Every yard of `sample-sites/`, by its file's name. */
export const samples: readonly Sample[] = Object.entries(found).map(([path, load]) => ({
  id: idOf(path),
  label: labelOf(idOf(path)),
  load,
}));
