import { createCell, type Cell } from '../../store/cell.ts';
// oxlint-disable-next-line import/default -- the build gives it its address
import workerAddress from './serviceWorker.ts?worker&url';
import { toldWorker } from './toldWorker.ts';

/** Whether a newer version is there: kept and waiting, or taken by another page already. */
export type Newer =
  | { readonly is: 'none' }
  | { readonly is: 'waiting'; readonly worker: ServiceWorker }
  | { readonly is: 'taken' };

/** The newest version that the device has, and what takes it. */
export interface Versions {
  readonly newer: Cell<Newer>;
  /** Loads the page anew with the newer version, unless `ready` says just before that it may not. */
  readonly take: (ready: () => boolean) => void;
}

/** How long the first screen has the device and the connection to itself, milliseconds. Ours. */
const grace = 2000;

/** Tells of a version that is complete on the device while an older one is at work. */
const watch = (registration: ServiceWorkerRegistration, newer: Cell<Newer>): void => {
  const { serviceWorker } = navigator;
  const look = (): void => {
    const worker = registration.waiting;
    // the first version ever is not a newer one
    if (worker === null || serviceWorker.controller === null) return;
    newer.setState({ is: 'waiting', worker }, true);
  };
  look();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', look);
  });
  document.addEventListener('visibilitychange', () => {
    // a page may be open for days; without a connection it is asked again the next time
    if (document.visibilityState === 'visible') registration.update().catch(() => undefined);
  });
};

/**
 * Keeps the program on the device, so that it opens without a connection, and watches for newer versions.
 * Does nothing where the browser keeps none: where a page came by a connection that is not secure, or
 * while the sources are served. Nothing that fails here is told, since the program works all the same.
 */
export const keepProgram = (): Versions => {
  const newer = createCell<Newer>({ is: 'none' });
  let wanted: (() => boolean) | null = null;
  const take: Versions['take'] = (ready) => {
    const now = newer.getState();
    if (now.is === 'taken' && ready()) window.location.reload();
    if (now.is !== 'waiting') return;
    wanted = ready;
    now.worker.postMessage(toldWorker.take, []);
  };
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return { newer, take };
  const { serviceWorker } = navigator;
  let looksAfter = serviceWorker.controller;
  serviceWorker.addEventListener('controllerchange', () => {
    const isFirst = looksAfter === null;
    looksAfter = serviceWorker.controller;
    if (isFirst) return;
    newer.setState({ is: 'taken' }, true);
    if (wanted?.() === true) window.location.reload();
    wanted = null;
  });
  const register = async (): Promise<void> => {
    const registration = await serviceWorker.register(workerAddress);
    watch(registration, newer);
    registration.active?.postMessage(toldWorker.opened, []);
  };
  setTimeout(() => void register().catch(() => undefined), grace);
  return { newer, take };
};
