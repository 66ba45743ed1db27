/** A document of some version as it was read: named fields, nothing known of them. */
export type PlainDocument = Readonly<Record<string, unknown>>;

/** From the version that a step is filed under to the next one. */
export type Upgrades = Readonly<Record<number, (document: PlainDocument) => PlainDocument>>;

/**
 * One step for each version of the file format that came before today's. None yet: version 1 is
 * the first. A step that is filed here is never changed again.
 */
export const upgrades: Upgrades = {};
