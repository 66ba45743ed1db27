import type { Keeping, Written } from '../../store/keeping.ts';

/** Windows of the program hear on this channel which job was written, and how often it has been. */
export const jobsChannel = 'lathline jobs';

/** Tells other windows of a write and hears of theirs, where the browser can. */
export const otherWindows = (): Pick<Keeping, 'tell' | 'hear'> => {
  if (typeof BroadcastChannel === 'undefined')
    return { tell: () => undefined, hear: () => undefined };
  const channel = new BroadcastChannel(jobsChannel);
  return {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a channel has no other origins
    tell: (written) => channel.postMessage(written),
    hear: (heard) => {
      channel.addEventListener('message', ({ data }: MessageEvent<Written>) => heard(data));
    },
  };
};
