import { phrase } from '../../phrases/phrase.ts';
import type { Becomes } from '../../site/becomes.ts';
import { offers } from '../../site/becomes.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import type { GroupSummary } from './foundSummary.ts';
import { becomesWords, countText } from './groupWords.ts';

interface Props {
  readonly groups: readonly GroupSummary[];
  readonly becomes: Readonly<Record<string, Becomes>>;
  readonly onChoose: (becomes: Readonly<Record<string, Becomes>>) => void;
}

/** Every layer of a file with what it has, and what that becomes. */
export const BringGroups = ({ groups, becomes, onChoose }: Props) => {
  const none = Object.fromEntries(groups.map(({ key }): [string, Becomes] => [key, 'leave out']));
  return (
    <>
      <ul className="plain bring-groups">
        {groups.map((group) => {
          const { key, layer, shape } = group;
          return (
            <li key={key}>
              <ChoiceField
                label={`${layer}: ${countText(group)}`}
                value={becomes[key] ?? 'leave out'}
                choices={offers[shape].map((value) => ({ value, label: becomesWords[value] }))}
                onChoose={(value) => onChoose({ ...becomes, [key]: value })}
              />
            </li>
          );
        })}
      </ul>
      {groups.length > 1 && (
        <div className="choices">
          <button type="button" onClick={() => onChoose(none)}>{phrase`Leave all out`}</button>
        </div>
      )}
    </>
  );
};
