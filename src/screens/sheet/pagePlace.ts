/** What a page is found by on the screen: its number, which its title begins with. */
export const pagePlace = (title: string): string => `page-${title.split(' ')[0] ?? ''}`;
