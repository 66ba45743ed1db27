/** Letters at most: a folder's path has room beside it. */
const longest = 60;

/** A job's name as the beginning of a file name: letters, digits and hyphens; `yard` for none. */
export const fileStem = (name: string): string => {
  const stem = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  const cut = [...stem].slice(0, longest).join('').replace(/-+$/, '');
  return cut === '' ? 'yard' : cut;
};
