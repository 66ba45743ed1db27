/** What the service worker of one build keeps on the device. */
export interface Parts {
  /** Tells two builds apart. */
  readonly version: string;
  /** Addresses from the folder of the program; `./` is the program's bare address. */
  readonly addresses: readonly string[];
}

/** The page that every screen is on. */
export const pageAddress = './index.html';
/** The program's bare address, which a server may send on to a sample. */
export const bareAddress = './';
/** The service worker itself, which the browser keeps. */
export const workerName = 'service-worker.js';

/** Whether a part keeps its name only as long as its bytes: what the build names by a digest. */
export const isLasting = (address: string): boolean => address.startsWith('./assets/');

/**
 * The addresses of the files of a build, by their names from its folder. Without letters as WOFF: what
 * knows service workers reads WOFF2.
 */
export const addressesOf = (files: readonly string[]): string[] => [
  bareAddress,
  ...files
    .filter((file) => file !== workerName && !file.endsWith('.woff'))
    .map((file) => `./${file}`)
    .sort(),
];
