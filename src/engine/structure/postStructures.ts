import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { SpecId } from '../../site/ids.ts';
import type { PostPipe } from '../../site/postPipe.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { hungFrom } from '../gate/hungFrom.ts';
import type { Layout } from '../layout.ts';
import type { Post } from '../post.ts';
import { footing, type Footing } from './footing.ts';
import { heldPosts, type HeldPost } from './heldPosts.ts';
import { lateralOf } from './lateralOf.ts';
import { pipeOf } from './pipeOf.ts';
import { isCompared, windOnPost, type Uncompared, type WindOnPost } from './windOnPost.ts';

/** What one post of a build, that holds the most fence of its use, pipe and hole, is compared with. Lengths in inches. */
export interface PostStructure extends HeldPost {
  readonly pipe: PostPipe;
  readonly wind: WindOnPost | Uncompared | null;
  /** Its hole by every rule; by the pole formula too where a wind is told. */
  readonly footing: Footing;
  /** Lateral bearing that was counted on, pounds per square foot for each foot of depth. */
  readonly lateral: number;
}

type Laid = Pick<Layout, 'lines' | 'posts' | 'gates'>;

/** The widest leaf that hangs from a post, inches; null for none. */
const leafOn = (site: Site, { gates }: Laid, post: Post): Inches | null => {
  const widths = post.gates.flatMap((id) => {
    const [gate, layout] = [site.gates[id], gates[id]];
    if (layout === undefined) return [];
    return layout.leaves.flatMap(({ width }, n) =>
      hungFrom(gate, layout, n) === post.id ? [width] : [],
    );
  });
  return widths.length === 0 ? null : inches(Math.max(...widths));
};

const structureOf = (
  site: Site,
  laid: Laid,
  { spec, held }: { readonly spec: FenceSpec; readonly held: HeldPost },
): PostStructure | null => {
  const { conditions } = site;
  const pipe = pipeOf(site, held.post);
  if (pipe === null) return null;
  const wind = windOnPost(spec, conditions, { pipe, wide: held.wide });
  const lateral = lateralOf(conditions);
  return {
    ...held,
    pipe,
    wind,
    lateral,
    footing: footing({
      od: held.post.od,
      fabricHeight: spec.fabricHeight,
      leaf: leafOn(site, laid, held.post),
      dug: held.post.hole.diameter,
      into: 'soil',
      frost: conditions.frost,
      pole: isCompared(wind) ? { push: wind.push, lateral, held: 'by nothing' } : null,
    }),
  };
};

/**
 * What wind, frost and ground ask of the posts of each build, beside what is planned: of every use, pipe and hole the post
 * that holds the most fence. Nothing where nobody has told of wind, ice or frost. Ground of which nobody
 * has told counts as the weakest of the table.
 */
export const postStructures = (
  site: Site,
  laid: Laid,
): ReadonlyMap<SpecId, readonly PostStructure[]> => {
  const { wind, ice, frost } = site.conditions;
  if (wind === null && ice === null && frost === null) return new Map();
  return new Map(
    [...heldPosts(site, laid)].map(([id, own]) => {
      const spec = site.specs[id];
      const found = own.flatMap((held) =>
        spec === undefined ? [] : (structureOf(site, laid, { spec, held }) ?? []),
      );
      return [id, found];
    }),
  );
};
