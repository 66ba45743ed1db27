import { phrase } from '../../../phrases/phrase.ts';
import { buildIn } from '../../../site/buildIn.ts';
import { addSpec } from '../../../site/edits/addSpec.ts';
import { copySpec } from '../../../site/edits/copySpec.ts';
import { changeAlternative } from '../../../site/edits/changeAlternative.ts';
import type { AlternativeId, SpecId } from '../../../site/ids.ts';
import { nextId } from '../../../site/nextId.ts';
import type { Site } from '../../../site/site.ts';
import { useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { offeredFences } from '../../plans/offeredFences.ts';
import { SpecFields } from '../../yard/cards/SpecFields.tsx';
import { useDo } from '../../yard/cards/useEdit.ts';
import { plannedBuilds } from './plannedBuilds.ts';

interface Props {
  readonly alternative: AlternativeId;
  /** The build of the plan. */
  readonly of: SpecId;
}

const copy = 'copy';

/** A site with a copy of a build put in its place. */
const withCopy = (site: Site, alternative: AlternativeId, of: SpecId): Site => {
  const id = nextId(site, 'spec');
  return changeAlternative(copySpec(site, of, id), alternative, { instead: { [of]: id } });
};

/** What an alternative has in place of one build of the plan: a build of the site, one of the tables, or a copy. */
export const InsteadField = ({ alternative, of }: Props) => {
  const site = useSite();
  const make = useDo();
  const plan = site.specs[of];
  const chosen = site.alternatives[alternative];
  if (plan === undefined || chosen === undefined) return null;
  const by = buildIn(chosen, of);
  const offered = offeredFences(site);
  const planned = plannedBuilds(site);
  const choose = (choice: SpecId | typeof copy) => {
    if (choice === copy) {
      make(phrase`Copy build`, (was) => withCopy(was, alternative, of));
      return;
    }
    const spec = offered.find(({ id }) => id === choice)?.spec;
    if (spec === undefined) return;
    make(phrase`Choose build`, (was) =>
      changeAlternative(addSpec(was, choice, spec), alternative, { instead: { [of]: choice } }),
    );
  };
  return (
    <div className="stack">
      <ChoiceField
        label={phrase`In place of ${plan.label}`}
        value={by}
        choices={[
          { value: of, label: phrase`As the plan: ${plan.label}` },
          ...offered
            .filter(({ id }) => id !== of)
            .map(({ id, spec }) => ({ value: id, label: spec.label })),
          { value: copy, label: phrase`A copy of ${plan.label}, to change` },
        ]}
        onChoose={choose}
      />
      {!planned.includes(of) && <p className="note">{phrase`No fence line is built so now.`}</p>}
      {!planned.includes(by) && by !== of && <SpecFields id={by} />}
    </div>
  );
};
