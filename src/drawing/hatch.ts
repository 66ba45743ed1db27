/** Lines over a piece of ground, by which it is told from others in grey too: leaning, both ways, or level. */
export type Hatch = 'diagonal' | 'cross' | 'level';
