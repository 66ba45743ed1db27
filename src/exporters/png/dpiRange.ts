/** Resolutions that a page can be made at, dots per inch: screens have 72 and more, fine printers 600. */
export const dpiRange = { least: 72, usual: 150, most: 600 } as const;
