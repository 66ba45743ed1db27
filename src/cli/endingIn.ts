/** Which of some endings, without their dot and in small letters, the name of a file has; null for none. */
export const endingIn = <T extends string>(out: string, endings: readonly T[]): T | null => {
  const found = /[^/\\]\.([^./\\]+)$/.exec(out)?.[1]?.toLowerCase();
  return endings.find((ending) => ending === found) ?? null;
};
