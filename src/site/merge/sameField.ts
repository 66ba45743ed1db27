import { same } from './same.ts';

const turnedTape = (read: unknown): unknown => {
  if (typeof read !== 'object' || read === null) return read;
  const { kind, from, to } = read as Readonly<Record<string, unknown>>;
  return kind === 'tape' ? { ...read, from: to, to: from } : read;
};

/** Whether a field says the same in both; a tape does whichever way it was pulled. */
export const sameField = (name: string, a: unknown, b: unknown): boolean =>
  same(a, b) || (name === 'read' && same(a, turnedTape(b)));

/** Whether two parts say the same, whatever place they have in a row. */
export const sameFields = (
  a: Readonly<Record<string, unknown>>,
  b: Readonly<Record<string, unknown>>,
): boolean =>
  [...new Set([...Object.keys(a), ...Object.keys(b)])].every(
    (name) => name === 'order' || sameField(name, a[name], b[name]),
  );
