/** Buried and overhead services with the colour that each is marked in (APWA uniform colour code). */
export const services = [
  { value: 'electric', label: 'Electric (red)' },
  { value: 'gas', label: 'Gas, oil, steam (yellow)' },
  { value: 'communication', label: 'Communication (orange)' },
  { value: 'water', label: 'Drinking water (blue)' },
  { value: 'reclaimed', label: 'Reclaimed water (purple)' },
  { value: 'sewer', label: 'Sewer and drain (green)' },
] as const;
