/** Something a service worker answers, for as long as the promise that it waits for. */
interface Awaited {
  readonly waitUntil: (work: Promise<unknown>) => void;
}

/** A request of a page that is answered by the worker, or left to the network where nothing answers. */
interface Asked extends Awaited {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
}

/** The little of a service worker's surroundings that is used here; the types of pages know none of it. */
export interface WorkerScope {
  readonly registration: ServiceWorkerRegistration;
  readonly clients: {
    readonly claim: () => Promise<void>;
    readonly matchAll: (of: {
      readonly type: 'window';
      readonly includeUncontrolled: boolean;
    }) => Promise<readonly unknown[]>;
  };
  readonly skipWaiting: () => Promise<void>;
  readonly addEventListener: {
    (on: 'install' | 'activate', hear: (event: Awaited) => void): void;
    (on: 'fetch', hear: (event: Asked) => void): void;
    (on: 'message', hear: (event: Awaited & { readonly data: unknown }) => void): void;
  };
}
