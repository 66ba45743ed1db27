import { createCell, type Cell } from '../../store/cell.ts';
import type { SiteStore } from '../../store/siteStore.ts';

/** Whether the browser has promised to let nothing of this program go; `unknown` before it was asked. */
export type KeepPromise = 'unknown' | 'promised' | 'not promised';

/** Asks the browser, with the first edit, to let nothing of this program go while the device runs low. */
export const askToKeep = (site: SiteStore): Cell<KeepPromise> => {
  const promise = createCell<KeepPromise>('unknown');
  // where there is no safe connection there is nobody to ask
  const storage = navigator.storage as StorageManager | undefined;
  const answer = (granted: boolean) =>
    promise.setState(granted ? 'promised' : 'not promised', true);
  const stop = site.subscribe(({ history }, before) => {
    if (history.present === before.history.present) return;
    stop();
    void (storage?.persist?.() ?? Promise.resolve(false)).then(answer, () => answer(false));
  });
  void (storage?.persisted?.() ?? Promise.resolve(false)).then(
    (granted) => granted && answer(true),
    () => undefined,
  );
  return promise;
};
