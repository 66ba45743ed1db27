import { addSpec } from '../../../site/edits/addSpec.ts';
import { ownSpec } from '../../../site/edits/ownSpec.ts';
import { setLineSpec } from '../../../site/edits/setLineSpec.ts';
import type { LineId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { offeredFences } from '../../plans/offeredFences.ts';
import { useDo } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** What a line is built as; one that shares its build can have one of its own. */
export const BuildField = ({ id }: { readonly id: LineId }) => {
  const site = useSite();
  const make = useDo();
  const own = site.lines[id]?.spec;
  if (own === undefined) return null;
  const builds = offeredFences(site);
  const others = Object.values(site.lines).filter(({ spec }) => spec === own).length - 1;
  return (
    <>
      <ChoiceField
        label={phrase`Built as`}
        value={own}
        choices={builds.map(({ id: value, spec }) => ({ value, label: spec.label }))}
        onChoose={(chosen) => {
          const build = builds.find((one) => one.id === chosen);
          if (build === undefined) return;
          make(phrase`Change fence`, (was) =>
            setLineSpec(addSpec(was, build.id, build.spec), id, build.id),
          );
        }}
      />
      {others > 0 && (
        <>
          <p className="note">
            {others === 1
              ? phrase`1 other line has this build and changes with it.`
              : phrase`${others} other lines have this build and changes with it.`}
          </p>
          <div className="choices">
            <button
              type="button"
              onClick={() => make(phrase`Give a build of its own`, (was) => ownSpec(was, id))}
            >
              {phrase`A build of its own`}
            </button>
          </div>
        </>
      )}
    </>
  );
};
