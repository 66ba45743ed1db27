import type { Post } from '../post.ts';

/** Posts that are counted together: those that one run meets first, or those beside the fence. */
export interface LoadGroup {
  readonly key: string;
  /** Tags say nothing here: they may be left out. */
  readonly posts: readonly Post[];
}
