import { phrase, phraseOf } from '../../../phrases/phrase.ts';
import { useBench, useSession } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { services, utilityRuns } from '../cards/services.ts';

/** Which service the next line marked on the ground is, and whether it is buried. */
export const NextUtility = () => {
  const { session } = useBench();
  const { utility } = useSession((state) => state.plans);
  return (
    <section aria-label={phrase`Next utility`}>
      <h3>{phrase`Next utility`}</h3>
      <ChoiceField
        label={phrase`Service`}
        value={utility.service}
        choices={services}
        onChoose={(service) =>
          session.setState(({ plans }) => ({
            plans: { ...plans, utility: { ...plans.utility, service } },
          }))
        }
      />
      <ChoiceField
        label={phraseOf('service')`Runs`}
        value={utility.run}
        choices={utilityRuns}
        onChoose={(run) =>
          session.setState(({ plans }) => ({
            plans: { ...plans, utility: { ...plans.utility, run } },
          }))
        }
      />
    </section>
  );
};
