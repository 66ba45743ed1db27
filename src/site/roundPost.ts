import type { Pipe } from './pipe.ts';
import type { PostPipe } from './postPipe.ts';

/** A post of round pipe: label, outside diameter and wall in inches, and nothing else that a table has of it. */
export const roundPost = ({ label, od, wall }: Pipe): PostPipe => ({
  label,
  od,
  wall,
  section: 'round',
});
