const longest = 60;

/** A job's name as the beginning of a file name: letters, digits and hyphens; `yard` for none. */
export const fileStem = (name: string): string => {
  const stem = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .slice(0, longest)
    .replace(/^-+|-+$/g, '');
  return stem === '' ? 'yard' : stem;
};
