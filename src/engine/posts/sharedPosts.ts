import type { Post, PostId, Posts } from '../post.ts';

type Lists = readonly (readonly Post[])[];
type Drawer = readonly Post[];

/** About so many posts lie in a drawer: few to look through, and few to copy. */
const inDrawer = 8;

/** FNV-1a of the codes of an id (Fowler, Noll and Vo: offset basis 2166136261, prime 16777619). */
const hashOf = (id: PostId): number => {
  let hash = 2166136261;
  for (let n = 0; n < id.length; n += 1) hash = Math.imul(hash ^ id.charCodeAt(n), 16777619);
  return hash >>> 0;
};

/** In which of so many drawers, a power of two, a post of an id lies. */
const drawerOf = (id: PostId, drawers: number): number => hashOf(id) & (drawers - 1);

/** As many drawers as make their number a power of two. */
const drawersFor = (size: number): number =>
  2 ** Math.max(0, Math.ceil(Math.log2(size / inDrawer)));

/**
 * Posts of some lists by their ids, in the order of the lists; no two have one id. They lie in drawers by the
 * hash of their ids: of an edit only those are copied in which a post is another. Made by `sharedPosts`.
 */
export class SharedPosts implements Posts {
  readonly lists: Lists;
  readonly drawers: readonly Drawer[];
  readonly size: number;

  constructor(lists: Lists, drawers: readonly Drawer[], size: number) {
    this.lists = lists;
    this.drawers = drawers;
    this.size = size;
  }

  get(id: PostId): Post | undefined {
    const own = this.drawers[drawerOf(id, this.drawers.length)] ?? [];
    for (const post of own) if (post.id === id) return post;
    return undefined;
  }

  has(id: PostId): boolean {
    return this.get(id) !== undefined;
  }

  values(): ReturnType<Posts['values']> {
    return new Array<Post>().concat(...this.lists).values();
  }

  /** In JSON they are a record by their ids. */
  toJSON(): Readonly<Record<PostId, Post>> {
    return Object.fromEntries([...this.values()].map((post) => [post.id, post]));
  }
}

const filled = (lists: Lists, count: number): readonly Drawer[] => {
  const drawers = Array.from({ length: count }, (): Post[] => []);
  for (const own of lists) {
    for (const post of own) drawers[drawerOf(post.id, count)]?.push(post);
  }
  return drawers;
};

/** The lists of each of two that are not the very same at their beginnings nor at their ends. */
const apart = (now: Lists, before: Lists): { readonly added: Lists; readonly gone: Lists } => {
  const shorter = Math.min(now.length, before.length);
  let first = 0;
  while (first < shorter && now[first] === before[first]) first += 1;
  let behind = 0;
  while (behind < shorter - first && now.at(-1 - behind) === before.at(-1 - behind)) behind += 1;
  const [added, gone] = [now, before].map((all) => all.slice(first, all.length - behind));
  return { added: added ?? [], gone: gone ?? [] };
};

/** The drawers of before with posts put in their places, and those taken out that are there no more. */
const refilled = (before: SharedPosts, lists: Lists): readonly Drawer[] => {
  const { added, gone } = apart(lists, before.lists);
  const drawers = before.drawers.slice();
  const change = (id: PostId, post: readonly Post[]): void => {
    const place = drawerOf(id, drawers.length);
    drawers[place] = [...(drawers[place] ?? []).filter((other) => other.id !== id), ...post];
  };
  const there = new Set<PostId>();
  for (const own of added) {
    for (const post of own) {
      there.add(post.id);
      if (before.get(post.id) !== post) change(post.id, [post]);
    }
  }
  for (const own of gone) for (const { id } of own) if (!there.has(id)) change(id, []);
  return drawers;
};

const sizeOf = (lists: Lists): number => lists.reduce((sum, own) => sum + own.length, 0);

/**
 * The posts of some lists by their ids, with as much as there is taken over from those of other lists; the same
 * whatever these are.
 */
export const sharedPosts = (lists: Lists, before: SharedPosts | undefined): SharedPosts => {
  const size = sizeOf(lists);
  const count = drawersFor(size);
  const drawers = before?.drawers.length === count ? refilled(before, lists) : filled(lists, count);
  return new SharedPosts(lists, drawers, size);
};
