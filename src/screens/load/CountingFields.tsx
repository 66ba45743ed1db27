import { setCounting } from '../../site/edits/setCounting.ts';
import type { Counting } from '../../site/counting.ts';
import { countingSources, type CountingSetting } from '../../trade/countingSources.ts';
import { concreteBags, concreteBagSource } from '../../trade/selling.ts';
import { useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { MaybeLengthField } from '../fields/MaybeLengthField.tsx';
import { SizeField } from '../fields/SizeField.tsx';
import { useEdit } from '../yard/cards/useEdit.ts';

type LengthSetting = Exclude<CountingSetting, 'railJoint'>;

/** The lengths of counting by what they are called, and whether they may be nothing. */
const lengths = [
  { key: 'bandSpacing', label: 'Tension bands, no farther apart than', least: 'above' },
  { key: 'bandInset', label: 'Outermost bands, in from the edge', least: 'zero' },
  { key: 'postTies', label: 'Ties up line posts, no farther apart than', least: 'above' },
  { key: 'railTies', label: 'Ties along rails, no farther apart than', least: 'above' },
  { key: 'hogRings', label: 'Hog rings, no farther apart than', least: 'above' },
  { key: 'barShort', label: 'Tension bars, shorter than the fabric by', least: 'zero' },
  { key: 'railStick', label: 'A stick of rail', least: 'above' },
  { key: 'lumber', label: 'A length of lumber for rails of boards', least: 'above' },
  { key: 'roll', label: 'A roll of fabric', least: 'above' },
  { key: 'kerf', label: 'What a cut takes', least: 'zero' },
  { key: 'gravel', label: 'Gravel under every post', least: 'zero' },
] as const satisfies readonly {
  readonly key: LengthSetting | 'gravel';
  readonly label: string;
  readonly least: 'above' | 'zero';
}[];

const sourceText = (key: LengthSetting | 'gravel'): string =>
  key === 'gravel'
    ? 'Company rule.'
    : `${countingSources[key].map(({ value, source }) => `${value}: ${source.text}`).join('; ')}.`;

/** How this company counts, cuts and orders: every setting with what is published of it. */
export const CountingFields = () => {
  const { counting, lengths: style } = useSite();
  const edit = useEdit();
  const change = (label: string, fields: Partial<Counting>) =>
    edit(label, (was) => setCounting(was, fields));
  return (
    <div className="halves">
      {lengths.map(({ key, label, least }) => (
        <div key={key} className="stack">
          <SizeField
            label={label}
            value={counting[key]}
            style={style}
            onEnter={(value) =>
              value > 0 || (value === 0 && least === 'zero')
                ? change('Change counting', { [key]: value })
                : `${label}: expected ${least === 'zero' ? '0 or more' : 'more than 0'}`
            }
          />
          <p className="note">{sourceText(key)}</p>
        </div>
      ))}
      <div className="stack">
        <MaybeLengthField
          label="A stick that posts are cut from"
          value={counting.postStick}
          style={style}
          note="Empty where posts are bought cut."
          onEnter={(postStick) =>
            postStick === null || postStick > 0
              ? change('Change counting', { postStick })
              : 'A stick: expected more than 0, or nothing'
          }
        />
      </div>
      <div className="stack">
        <ChoiceField
          label="Sticks of rail are joined"
          value={counting.railJoint}
          choices={[
            { value: 'swaged', label: 'Swaged: one into the next' },
            { value: 'sleeve', label: 'By a sleeve' },
          ]}
          onChoose={(railJoint) => void change('Change counting', { railJoint })}
        />
      </div>
      <div className="stack">
        <ChoiceField
          label="Bags of dry concrete"
          value={String(counting.bag)}
          choices={concreteBags.map(({ pounds, makes }) => ({
            value: String(pounds),
            label: `${pounds} lb, makes ${makes} cu ft`,
          }))}
          onChoose={(chosen) => {
            const bag = concreteBags.find(({ pounds }) => String(pounds) === chosen);
            if (bag !== undefined) void change('Change counting', { bag: bag.pounds });
          }}
        />
        <p className="note">{concreteBagSource.text}.</p>
      </div>
    </div>
  );
};
