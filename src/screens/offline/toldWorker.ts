/** What a page tells the service worker. */
export const toldWorker = {
  /** To a version that waits: it is wanted now. */
  take: 'take',
  /** To the one at work: a page was opened. */
  opened: 'opened',
} as const;
