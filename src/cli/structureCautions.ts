import { codesCaution, digCaution, figuresCaution } from '../trade/cautions.ts';

/** What the answer of every structure check ends with: digging, local codes, and that it approves nothing. */
export const structureCautions: readonly string[] = [digCaution, codesCaution, figuresCaution].map(
  ({ text }) => text,
);
