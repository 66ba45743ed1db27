import { phrase } from '../../../phrases/phrase.ts';

/** Buried and overhead services with the colour that each is marked in (APWA uniform colour code). */
export const services = [
  { value: 'electric', label: phrase`Electric (red)` },
  { value: 'gas', label: phrase`Gas, oil, steam (yellow)` },
  { value: 'communication', label: phrase`Communication (orange)` },
  { value: 'water', label: phrase`Drinking water (blue)` },
  { value: 'reclaimed', label: phrase`Reclaimed water (purple)` },
  { value: 'sewer', label: phrase`Sewer and drain (green)` },
] as const;

/** How a service runs: what is buried closes its ground to holes. */
export const utilityRuns = [
  { value: 'buried', label: phrase`Buried` },
  { value: 'overhead', label: phrase`Overhead` },
] as const;
