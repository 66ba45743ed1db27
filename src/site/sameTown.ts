const plain = (town: string): string => town.trim().replace(/\s+/g, ' ').toLowerCase();

/** Whether two names are of one town: alike but for blanks and capitals. */
export const sameTown = (one: string, other: string): boolean => plain(one) === plain(other);
