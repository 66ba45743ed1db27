/** Buried and overhead services with the colour that each is marked in (APWA uniform colour code). */
export const services = [
  { value: 'electric', label: 'Electric (red)' },
  { value: 'gas', label: 'Gas, oil, steam (yellow)' },
  { value: 'communication', label: 'Communication (orange)' },
  { value: 'water', label: 'Drinking water (blue)' },
  { value: 'reclaimed', label: 'Reclaimed water (purple)' },
  { value: 'sewer', label: 'Sewer and drain (green)' },
] as const;

/** How a service runs: what is buried closes its ground to holes. */
export const utilityRuns = [
  { value: 'buried', label: 'Buried' },
  { value: 'overhead', label: 'Overhead' },
] as const;
