/** Units that a file can have its coordinates in. */
export type FileUnit =
  'feet' | 'US survey feet' | 'inches' | 'yards' | 'metres' | 'centimetres' | 'millimetres';

/**
 * Inches in one of each: 25.4 mm to the inch (international yard and pound, 1959); a US survey foot is
 * 1200/3937 m (85 FR 62698), the foot of most state planes before 2023.
 */
export const inchesIn: Readonly<Record<FileUnit, number>> = {
  feet: 12,
  'US survey feet': 1200 / 3937 / 0.0254,
  inches: 1,
  yards: 36,
  metres: 1000 / 25.4,
  centimetres: 10 / 25.4,
  millimetres: 1 / 25.4,
};

export const fileUnits = Object.keys(inchesIn) as readonly FileUnit[];
