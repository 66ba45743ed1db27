import { bareAddress, isLasting, pageAddress, type Parts } from './partsOf.ts';
import { answersFor } from './answersFor.ts';
import { toldWorker } from './toldWorker.ts';
import type { WorkerScope } from './workerScope.ts';

/** Put in its place by the build, which alone knows all parts. */
declare const partsOfBuild: Parts;

const worker = self as unknown as WorkerScope;
const { version, addresses } = partsOfBuild;
const shelfName = `lathline ${version}`;
const { scope } = worker.registration;

/** A part from the network, or from another version that has the same; rejects where it cannot be had. */
const fetched = async (address: string): Promise<Response> => {
  const url = new URL(address, scope).href;
  const had = isLasting(address) ? await caches.match(url, { ignoreVary: true }) : undefined;
  const part = had ?? (await fetch(url, { cache: 'no-cache' }));
  if (!part.ok) throw new Error(`${address}: expected a part of the program, got ${part.status}`);
  return part;
};

/** Keeps every part of this version, or none of it. */
const install = async (): Promise<void> => {
  const parts = await Promise.all(
    addresses.map(async (address) => [address, await fetched(address)] as const),
  );
  const shelf = await caches.open(shelfName);
  await Promise.all(parts.map(([address, part]) => shelf.put(new URL(address, scope).href, part)));
};

/**
 * Lets the parts of other versions go once the page that asks is the only one: a page that was opened
 * by an older version fetches its parts as they are needed, for as long as it is open.
 */
const letOthersGo = async (): Promise<void> => {
  const { installing, waiting } = worker.registration;
  // what comes next is on the shelf already
  if (installing !== null || waiting !== null) return;
  const pages = await worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (pages.length > 1) return;
  const names = await caches.keys();
  const others = names.filter((name) => name.startsWith('lathline ') && name !== shelfName);
  await Promise.all(others.map((name) => caches.delete(name)));
};

/** A page of this version; sent on where the server sent it on when it was kept. */
const page = async (address: string, request: Request): Promise<Response> => {
  const shelf = await caches.open(shelfName);
  const kept = await shelf.match(new URL(address, scope).href, { ignoreVary: true });
  if (kept === undefined) return fetch(request);
  return kept.redirected ? Response.redirect(kept.url) : kept;
};

/** A part of this version, else of another that is still kept, else from the network. */
const part = async (request: Request): Promise<Response> => {
  const shelf = await caches.open(shelfName);
  const asKept = { ignoreVary: true } as const;
  const kept = (await shelf.match(request, asKept)) ?? (await caches.match(request, asKept));
  return kept ?? fetch(request);
};

worker.addEventListener('install', (event) => event.waitUntil(install()));
// pages that were there before are looked after too; it never makes one load anew
worker.addEventListener('activate', (event) => event.waitUntil(worker.clients.claim()));
worker.addEventListener('message', (event) => {
  if (event.data === toldWorker.take) event.waitUntil(worker.skipWaiting());
  if (event.data === toldWorker.opened) event.waitUntil(letOthersGo());
});
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const answer = answersFor(request, scope);
  if (answer === 'bare') event.respondWith(page(bareAddress, request));
  if (answer === 'page') event.respondWith(page(pageAddress, request));
  if (answer === 'part') event.respondWith(part(request));
});
