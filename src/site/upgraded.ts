import { read, unread } from '../units/parsed.ts';
import type { Parsed } from '../units/parsed.ts';
import { quoted } from './quoted.ts';
import { siteVersion } from './site.ts';
import { upgrades } from './upgrades.ts';
import type { PlainDocument, Upgrades } from './upgrades.ts';
import { phrase } from '../phrases/phrase.ts';

/** The steps to walk, and the version to walk to. */
export interface UpgradePath {
  readonly steps: Upgrades;
  readonly to: number;
}

/**
 * A document brought to the version `to`, one step after another; the version is set by the walk,
 * not by the steps. Unread with one line: a version that is no whole number from 1, a newer one,
 * one from which no step leads on, a document on which a step fails.
 */
export const upgraded = (
  document: PlainDocument,
  { steps, to }: UpgradePath = { steps: upgrades, to: siteVersion },
): Parsed<PlainDocument> => {
  const { version } = document;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return unread(
      phrase`version: expected ${to === 1 ? '1' : phrase`a whole number from 1 to ${to}`}, found ${quoted(version)}`,
    );
  }
  if (version > to) {
    return unread(
      phrase`this file was saved by a newer version (format version ${version}); this program reads up to ${to}`,
    );
  }
  let present = document;
  for (let from = version; from < to; from += 1) {
    const next = stepped(present, steps, from);
    if (next === null) {
      return unread(
        phrase`version: expected a file that can be brought to version ${to}, found ${from}`,
      );
    }
    present = next;
  }
  return read(present);
};

const stepped = (document: PlainDocument, steps: Upgrades, from: number): PlainDocument | null => {
  try {
    const step = steps[from];
    return step === undefined ? null : { ...step(document), version: from + 1 };
  } catch {
    // a step may meet a document that is not what its version promised
    return null;
  }
};
