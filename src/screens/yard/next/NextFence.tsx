import { usualSpec } from '../../../engine/usualSpec.ts';
import type { SpecId } from '../../../site/ids.ts';
import { inches } from '../../../units/inches.ts';
import { useBench, useSession, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import type { FencePlan } from '../../../store/plans.ts';

/** Heights of fabric that are offered, in feet. */
const fenceHeights = [4, 5, 6, 8, 10, 12] as const;

/** How the next fence line will be built: as one that is on the site, or by the tables for a height. */
export const NextFence = () => {
  const { session } = useBench();
  const { specs } = useSite();
  const { fence } = useSession((state) => state.plans);
  const carried = Object.entries(specs).map(([id, spec]): FencePlan => ({
    id: id as SpecId,
    spec,
  }));
  const tables = fenceHeights.map((feet) => usualSpec(inches(feet * 12)));
  const offered = [...carried, ...tables.filter(({ id }) => !Object.hasOwn(specs, id))];
  return (
    <section aria-label="Next fence">
      <h3>Next fence</h3>
      <ChoiceField
        label="Built as"
        value={fence.id}
        choices={offered.map(({ id, spec }) => ({ value: id, label: spec.label }))}
        onChoose={(id) => {
          const chosen = offered.find((one) => one.id === id);
          if (chosen === undefined) return;
          session.setState(({ plans }) => ({ plans: { ...plans, fence: chosen } }));
        }}
      />
      <p className="note">{offered.find(({ id }) => id === fence.id)?.spec.remark}</p>
    </section>
  );
};
