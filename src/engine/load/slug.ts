/** Letters and digits of a name in small letters, hyphens between: the same whatever else stood there. */
export const slug = (name: string): string =>
  name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '');
