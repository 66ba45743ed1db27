/** Colours by what they stand for; each painter's palette says what they look like. */
export const inks = [
  'paper',
  'grid',
  'line',
  'faint',
  'fence',
  'post',
  'gate',
  'leaf',
  'building',
  'boundary',
  'paving',
  'water',
  'tree',
  'ground',
  'keep-out',
  'height zone',
  'dimension',
  'text',
  'stop',
  'settle',
  'caution',
  'selected',
  'ghost',
  'tape',
  'survey',
  'electric',
  'gas',
  'communication',
  'potable',
  'reclaimed',
  'sewer',
] as const;

export type Ink = (typeof inks)[number];

/** A CSS colour `#rrggbb` for every ink. */
export type Palette = Readonly<Record<Ink, string>>;
