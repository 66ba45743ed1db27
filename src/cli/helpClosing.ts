import { phrase } from '../phrases/phrase.ts';
/** What every page of help ends with: how files and lengths are given, and what the exit codes say. */
export const helpClosing: readonly string[] = [
  phrase`SITE and FILE are files; - reads standard input.`,
  phrase`Lengths are written as on a tape: 56 1/4, 9'-10 1/2", 118.5in, 3005mm; a bare number is inches.`,
  phrase`A shell takes a lone foot mark for a quote: write 54ft or "54'".`,
  phrase`Exit codes: 0 done, 1 a stop flag stands, 2 bad input.`,
];
