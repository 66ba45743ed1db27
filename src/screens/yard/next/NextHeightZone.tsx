import { phrase } from '../../../phrases/phrase.ts';
import type { HeightPlan, Plans } from '../../../store/plans.ts';
import { useBench, useSession } from '../../bench.ts';
import { HeightLimits } from '../cards/HeightLimits.tsx';

interface Props {
  readonly of: keyof Plans['heights'];
}

const titles: Readonly<Record<Props['of'], string>> = {
  'sight triangle': phrase`Next sight triangle`,
  'front yard': phrase`Next front yard`,
};

/** How high fence may stand in the next ground of its kind. */
export const NextHeightZone = ({ of }: Props) => {
  const { session } = useBench();
  const { heights } = useSession((state) => state.plans);
  const plan = (limits: Partial<HeightPlan>): null => {
    session.setState(({ plans }) => ({
      plans: {
        ...plans,
        heights: { ...plans.heights, [of]: { ...plans.heights[of], ...limits } },
      },
    }));
    return null;
  };
  return (
    <section aria-label={titles[of]}>
      <h3>{titles[of]}</h3>
      {of === 'sight triangle' && (
        <p className="note">
          {phrase`At a corner of a boundary or of paving it is quicker from the card of that corner: select the corner, then its key.`}
        </p>
      )}
      <HeightLimits of={of} limits={heights[of]} onEnter={plan} />
    </section>
  );
};
