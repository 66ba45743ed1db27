import { cautions } from '../trade/cautions.ts';

/** What the answer of every structure check ends with: digging, local codes, and that it approves nothing. */
export const structureCautions: readonly string[] = cautions
  .filter(({ text }) => /^(?:Call before|Local codes|Figures compare)/.test(text))
  .map(({ text }) => text);
