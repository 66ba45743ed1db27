import type { Source } from './source.ts';
import { phrase } from '../phrases/phrase.ts';

/** What one colour of paint or flag on the ground stands for. */
export interface UtilityColour {
  readonly colour: 'red' | 'yellow' | 'orange' | 'blue' | 'purple' | 'green' | 'pink' | 'white';
  readonly means: string;
}

/** Where the colours come from; legends cite it. */
export const utilityColourCode: Source = {
  text: 'APWA Uniform Color Code for marking underground utilities',
  status: 'published',
};

/** Every colour of the code by what is marked, in the order in which legends list them. */
export const utilityColours = {
  electric: { colour: 'red', means: phrase`electric power and lighting` },
  gas: { colour: 'yellow', means: phrase`gas, oil, steam` },
  communication: { colour: 'orange', means: phrase`telephone, television, alarm, signal` },
  water: { colour: 'blue', means: phrase`drinking water` },
  reclaimed: { colour: 'purple', means: phrase`reclaimed water, irrigation` },
  sewer: { colour: 'green', means: phrase`sewer and drain` },
  survey: { colour: 'pink', means: phrase`temporary survey mark` },
  excavation: { colour: 'white', means: phrase`where digging is planned` },
} as const satisfies Readonly<Record<string, UtilityColour>>;
