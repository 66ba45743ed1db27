import type { Flag } from '../engine/flag.ts';
import { columns } from './columns.ts';

/** Flags as aligned lines, in the order given: level, what it stands on, message. One line for none. */
export const flagLines = (flags: readonly Flag[]): string[] =>
  flags.length === 0
    ? ['no flags']
    : columns(flags.map(({ level, place, message }) => [level, place.id, message]));
