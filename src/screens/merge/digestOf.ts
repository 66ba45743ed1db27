import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Site } from '../../site/site.ts';
import { unlinedText } from '../../site/unlinedText.ts';

const known = new WeakMap<Site, string>();

/** The digest of a document: SHA-256 of its text but for where it comes from. Remembered. */
export const digestOf = (site: Site): string => {
  const found = known.get(site);
  if (found !== undefined) return found;
  const digest = bytesToHex(sha256(utf8ToBytes(unlinedText(site))));
  known.set(site, digest);
  return digest;
};
