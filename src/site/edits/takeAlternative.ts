import type { Alternative } from '../alternative.ts';
import { buildIn } from '../buildIn.ts';
import { entry } from '../entry.ts';
import type { FenceLine } from '../fenceLine.ts';
import type { FenceSpec } from '../fenceSpec.ts';
import type { AlternativeId, LineId, SpecId } from '../ids.ts';
import { namedAlternative } from '../namedAlternative.ts';
import { nextId } from '../nextId.ts';
import type { Site } from '../site.ts';
import { withEntries, withEntry } from '../withEntries.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The builds of the plan, each with the one that its lines have from now on; no two have the same. */
type Turned = ReadonlyMap<SpecId, SpecId>;

const longest = 200;

/** A build that two builds of the plan would share, again for the second of them. */
const copyFor = (site: Site, of: SpecId, plan: SpecId): FenceSpec => {
  const { label } = entry(site, 'specs', plan);
  const shared = entry(site, 'specs', of);
  return { ...shared, label: phrase`${shared.label}, for ${label}`.slice(0, longest) };
};

/** What each build of the plan becomes, and the site with the copies that this takes. */
const turned = (site: Site, taken: Alternative): { readonly site: Site; readonly by: Turned } => {
  const plan = new Set(Object.values<FenceLine>(site.lines).map(({ spec }) => spec));
  const by = new Map([...plan].map((spec) => [spec, buildIn(taken, spec)] as const));
  // a build that stays as it is is the last to be copied
  const order = [...by].toSorted(([a, to], [b, other]) => Number(a !== to) - Number(b !== other));
  const used = new Set<SpecId>();
  let so = site;
  for (const [of, to] of order) {
    if (used.has(to)) {
      const copy = nextId(so, 'spec');
      so = withEntry(so, 'specs', copy, copyFor(so, to, of));
      by.set(of, copy);
    }
    used.add(by.get(of) ?? to);
  }
  return { site: so, by };
};

/** What an alternative says of the builds of the new plan, so that its lines have the builds that they had in it. */
const turnedRound = (alternative: Alternative, wanted: (plan: SpecId) => SpecId, by: Turned) => {
  const fresh = new Set(by.values());
  const idle = (Object.entries(alternative.instead) as [SpecId, SpecId][]).filter(
    ([of]) => !by.has(of) && !fresh.has(of),
  );
  const own = [...by]
    .map(([of, to]) => [to, wanted(of)] as const)
    .filter(([to, other]) => to !== other);
  return { ...alternative, instead: Object.fromEntries([...idle, ...own]) };
};

/**
 * Makes an alternative the plan: each fence line has its build from now on, and the alternative, under the
 * name `was`, holds the builds that the plan had. Every other alternative gives its lines what it gave them.
 * Where two builds of the plan would become one, the second gets a copy of that under a name of its own, so
 * that nothing is lost. The same site where no line changes. RangeError for an unknown alternative, a name
 * of blanks, and for copies that the site has no room for.
 */
export const takeAlternative = (site: Site, id: AlternativeId, was: string): Site => {
  const taken = entry(site, 'alternatives', id);
  const label = namedAlternative(was);
  const { site: ready, by } = turned(site, taken);
  if ([...by].every(([of, to]) => of === to)) return site;
  const lines = (Object.entries(site.lines) as [LineId, FenceLine][]).map(([line, fence]) => [
    line,
    { ...fence, spec: by.get(fence.spec) ?? fence.spec },
  ]);
  const alternatives = (Object.entries(site.alternatives) as [AlternativeId, Alternative][]).map(
    ([other, alternative]) => [
      other,
      other === id
        ? { ...turnedRound(alternative, (plan) => plan, by), label }
        : turnedRound(alternative, (plan) => buildIn(alternative, plan), by),
    ],
  );
  const built = withEntries(ready, 'lines', Object.fromEntries(lines));
  return withEntries(built, 'alternatives', Object.fromEntries(alternatives));
};
