import { unread } from '../units/parsed.ts';
import type { Parsed } from '../units/parsed.ts';
import { limits } from './limits.ts';
import { openDocument } from './openDocument.ts';
import { quoted } from './quoted.ts';
import type { Site } from './site.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * Opens a site file from its text. Unread with one line for whatever cannot be opened: text that
 * is cut off, foreign, too long, from a newer version, or with a wrong value; never throws.
 */
export const openSite = (text: string): Parsed<Site> => {
  if (text.length > limits.text) {
    return unread(
      phrase`site file: expected at most ${limits.text} characters, found ${text.length}`,
    );
  }
  // some editors put a byte order mark in front
  const plain = text.replace(/^\uFEFF/, '');
  if (plain.trim() === '')
    return unread(phrase`this is not a site file: expected JSON, found nothing`);
  const parsed = fromJson(plain);
  return 'value' in parsed ? openDocument(parsed.value) : unread(brokenLine(plain));
};

const fromJson = (text: string): { readonly value: unknown } | Record<string, never> => {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    return {};
  }
};

const brokenLine = (text: string): string =>
  text.trimStart().startsWith('{')
    ? phrase`site file is cut off or damaged: expected whole JSON, found it to end with ${quoted(text.trimEnd().slice(-30))}`
    : phrase`this is not a site file: expected JSON, found ${quoted(text.trim())}`;
