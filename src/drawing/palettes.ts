import type { Palette } from './ink.ts';

/**
 * Print colours. Every ink keeps its rank in grey, so a sheet from a black-and-white printer
 * still reads. Utility hues follow the uniform colour code of the public works association
 * (red, yellow, orange, blue, purple, green), darkened until they show as lines on white; so does the
 * pink that it has for temporary survey markings.
 */
const paper: Palette = {
  paper: '#ffffff',
  grid: '#dbe7e1',
  line: '#26333a',
  faint: '#7d888c',
  fence: '#14222b',
  post: '#14222b',
  gate: '#9a3412',
  leaf: '#b4531c',
  building: '#3d464b',
  boundary: '#5d4a1f',
  paving: '#767f80',
  water: '#1f6f92',
  tree: '#3c7440',
  ground: '#7a5230',
  'keep-out': '#8f2344',
  'height zone': '#3d4596',
  dimension: '#3f4d54',
  text: '#101b21',
  stop: '#a31621',
  settle: '#7a4a00',
  caution: '#5a5300',
  selected: '#0b57b0',
  ghost: '#5f6f8a',
  tape: '#f6ecc4',
  survey: '#b3107f',
  electric: '#c81e1e',
  gas: '#8a6a00',
  communication: '#c2570c',
  potable: '#1d5fbf',
  reclaimed: '#7b2fa0',
  sewer: '#1f7a34',
};

/** The pad by daylight: warm paper, the rest as printed. */
const day: Palette = { ...paper, paper: '#fdfbf3', grid: '#d3e3da' };

/** The pad at dusk: light lines on slate. */
const dark: Palette = {
  paper: '#182026',
  grid: '#26343b',
  line: '#c9d4d6',
  faint: '#8a979c',
  fence: '#eef3f2',
  post: '#eef3f2',
  gate: '#ffb184',
  leaf: '#f08d4f',
  building: '#b9c4c7',
  boundary: '#d9c187',
  paving: '#98a3a5',
  water: '#74c3e6',
  tree: '#8cc98f',
  ground: '#d8b48c',
  'keep-out': '#f590ac',
  'height zone': '#b0b7ff',
  dimension: '#b7c4c9',
  text: '#f3f6f5',
  stop: '#ff9b94',
  settle: '#ffc46b',
  caution: '#e6dc70',
  selected: '#7fb8ff',
  ghost: '#9fb0cc',
  tape: '#3a3a26',
  survey: '#ff8ad8',
  electric: '#ff7b72',
  gas: '#e8c341',
  communication: '#ffa657',
  potable: '#79b8ff',
  reclaimed: '#d2a8ff',
  sewer: '#7ee787',
};

/** For full sun: black on white, few and strong colours. */
const sun: Palette = {
  paper: '#ffffff',
  grid: '#c9d6cf',
  line: '#000000',
  faint: '#595f62',
  fence: '#000000',
  post: '#000000',
  gate: '#7c2100',
  leaf: '#8f3300',
  building: '#1f2426',
  boundary: '#46350c',
  paving: '#4d5557',
  water: '#00527a',
  tree: '#1f5a24',
  ground: '#5e3a14',
  'keep-out': '#7a0030',
  'height zone': '#272e7d',
  dimension: '#1d282d',
  text: '#000000',
  stop: '#8b0010',
  settle: '#5c3600',
  caution: '#433d00',
  selected: '#003c96',
  ghost: '#3d4a63',
  tape: '#ffe98a',
  survey: '#8f0062',
  electric: '#a80000',
  gas: '#6b5000',
  communication: '#8f3b00',
  potable: '#003f9e',
  reclaimed: '#5b1580',
  sewer: '#00561d',
};

/** The colours of every ink on printed sheets (`paper`) and for the three ways to light the pad. */
export const palettes = { paper, day, dark, sun } as const satisfies Record<string, Palette>;
