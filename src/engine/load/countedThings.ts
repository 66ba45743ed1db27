import type { Pipe } from '../../site/pipe.ts';
import { railsOf } from '../../site/railsOf.ts';
import { inches } from '../../units/inches.ts';
import { newCarry, type Carry } from '../carry/carry.ts';
import type { GateLayout, Layout } from '../layout.ts';
import { standsByGate, type Post, type PostId } from '../post.ts';
import { boardThings } from './boardThings.ts';
import { bracesOf, type Brace } from './braces.ts';
import type { Counted } from './counted.ts';
import { fabricSizes } from './fabricSizes.ts';
import type { HungPiece } from './hungPieces.ts';
import { panelThings } from './panelThings.ts';
import { onPosts, thing } from './thing.ts';

const endsOf = ({ posts }: HungPiece): readonly Post[] =>
  [posts[0], posts.at(-1)].flatMap((p) => p ?? []);

const fabricThings = (hung: HungPiece): Counted[] => {
  const { spec, posts } = hung;
  const height = { length: spec.fabricHeight };
  return [
    thing('fabric', hung, { sizes: { fabric: fabricSizes(spec) } }),
    ...(spec.solid === null
      ? []
      : [thing('slatted fabric', hung, { sizes: { height: spec.fabricHeight } })]),
    ...endsOf(hung).map((post) =>
      thing('fabric end', hung, {
        ...height,
        ...onPosts(post),
        sizes: { post, height: spec.fabricHeight },
      }),
    ),
    ...posts.slice(1, -1).map((post) => thing('line post', hung, { ...height, ...onPosts(post) })),
  ];
};

const railEnd = (hung: HungPiece, post: Post, rail: Pipe): Counted =>
  thing('rail end', hung, {
    ...onPosts(post),
    sizes: { post, rail },
  });

const railThings = (hung: HungPiece): Counted[] => {
  const along = railsOf(hung.spec).flatMap(({ pipe }): Counted[] => {
    const sizes = { rail: pipe };
    // ties go as far as the fabric does
    return [
      thing('rail', hung, { sizes }),
      ...endsOf(hung).map((post) => railEnd(hung, post, pipe)),
    ];
  });
  const wires = [hung.spec.topRail, hung.spec.bottomRail].filter((rail) => rail === null);
  return [...along, ...wires.map(() => thing('tension wire', hung, {}))];
};

const braceThings = (hung: HungPiece, brace: Brace): Counted[] => [
  thing('brace', hung, {
    length: brace.length,
    ...onPosts(brace.terminal),
    sizes: { post: brace.terminal, rail: brace.pipe },
  }),
  railEnd(hung, brace.terminal, brace.pipe),
  railEnd(hung, brace.next, brace.pipe),
];

const barbedThings = (hung: HungPiece): Counted[] => {
  const { barbedWire } = hung.spec;
  if (barbedWire === null) return [];
  const length = inches(barbedWire.strands * hung.piece.length);
  return [thing('barbed wire', hung, { length })];
};

/** What is between the posts of a piece, by what its build has there. */
const infillThings = (hung: HungPiece): Counted[] => {
  const { infill } = hung.spec;
  switch (infill.kind) {
    case 'chain link':
      return [
        ...fabricThings(hung),
        ...railThings(hung),
        ...bracesOf(hung.piece, hung.spec, hung.posts).flatMap((brace) => braceThings(hung, brace)),
      ];
    case 'boards':
      return boardThings(hung, infill);
    case 'panels':
      return panelThings(hung, infill);
  }
};

/** Posts over which a top rail runs, with it; every other post of fence or gate has a cap of its own. */
const capThings = (all: readonly HungPiece[], posts: readonly Post[]): Counted[] => {
  const ends = new Set<PostId>(all.flatMap((hung) => endsOf(hung).map(({ id }) => id)));
  const under = new Map<PostId, Counted>();
  const armed = new Map<PostId, Counted>();
  for (const hung of all) {
    const { barbedWire } = hung.spec;
    const topRail = railsOf(hung.spec).find(({ part }) => part === 'top rail')?.pipe;
    for (const post of hung.posts) {
      if (barbedWire !== null) {
        const sizes = { post, arms: barbedWire.arms };
        armed.set(post.id, thing('barbed wire post', hung, { ...onPosts(post), sizes }));
      }
      if (topRail === undefined || ends.has(post.id)) continue;
      const sizes = { post, rail: topRail };
      under.set(post.id, thing('post under a rail', hung, { ...onPosts(post), sizes }));
    }
  }
  const bare = posts
    .filter((post) => !under.has(post.id) && !standsByGate(post))
    .map((post): Counted => ({
      basis: 'post without a rail over it',
      count: 1,
      length: post.above,
      sizes: { post },
      ...onPosts(post),
    }));
  return [...under.values(), ...bare, ...armed.values()];
};

const receiverThings = (gates: readonly GateLayout[]): Counted[] =>
  gates.flatMap(({ id, receiver }): Counted[] =>
    receiver === null
      ? []
      : [
          {
            basis: 'receiver',
            count: 1,
            length: receiver.hole.depth,
            sizes: {},
            on: { posts: [], lines: [], gates: [id] },
          },
        ],
  );

const pieceThings = (hung: HungPiece): readonly Counted[] => [
  ...infillThings(hung),
  ...barbedThings(hung),
];

/**
 * Everything on a laid out site that rules of counting count: its pieces of fabric, posts and gates; the very
 * same list where nothing of it has changed.
 */
export const countedThings = (
  all: readonly HungPiece[],
  { posts, gates }: Pick<Layout, 'posts' | 'gates'>,
  carry: Carry = newCarry(),
): readonly Counted[] => {
  const placed = Object.values<GateLayout>(gates);
  const keyOf = ({ piece }: HungPiece): string => `${piece.line} ${piece.posts[0]}`;
  return carry.shelf<readonly Counted[]>('things').part('', [all, posts, ...placed], (own) => {
    const known = own.shelf<readonly Counted[]>('things of a piece');
    return [
      ...all.flatMap((hung) => known.take(keyOf(hung), [hung], () => pieceThings(hung))),
      ...capThings(all, [...posts.values()]),
      ...receiverThings(placed),
    ];
  });
};
