import { phrase } from '../../../phrases/phrase.ts';
import { useBench, useSession, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { offeredFences } from '../../plans/offeredFences.ts';

/** How the next fence line will be built: as one that is on the site, or by the tables for a height. */
export const NextFence = () => {
  const { session } = useBench();
  const { specs } = useSite();
  const { fence } = useSession((state) => state.plans);
  const offered = offeredFences({ specs });
  return (
    <section aria-label={phrase`Next fence`}>
      <h3>{phrase`Next fence`}</h3>
      <ChoiceField
        label={phrase`Built as`}
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
