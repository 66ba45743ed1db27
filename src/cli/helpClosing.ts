/** What every page of help ends with: how files and lengths are given, and what the exit codes say. */
export const helpClosing: readonly string[] = [
  'SITE and FILE are files; - reads standard input.',
  `Lengths are written as on a tape: 56 1/4, 9'-10 1/2", 118.5in, 3005mm; a bare number is inches.`,
  `A shell takes a lone foot mark for a quote: write 54ft or "54'".`,
  'Exit codes: 0 done, 1 a stop flag stands, 2 bad input.',
];
