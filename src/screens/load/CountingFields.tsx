import { phrase } from '../../phrases/phrase.ts';
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
  { key: 'bandSpacing', label: phrase`Tension bands, no farther apart than`, least: 'above' },
  { key: 'bandInset', label: phrase`Outermost bands, in from the edge`, least: 'zero' },
  { key: 'postTies', label: phrase`Ties up line posts, no farther apart than`, least: 'above' },
  { key: 'railTies', label: phrase`Ties along rails, no farther apart than`, least: 'above' },
  { key: 'hogRings', label: phrase`Hog rings, no farther apart than`, least: 'above' },
  { key: 'barShort', label: phrase`Tension bars, shorter than the fabric by`, least: 'zero' },
  { key: 'railStick', label: phrase`A stick of rail`, least: 'above' },
  { key: 'lumber', label: phrase`A length of lumber for rails of boards`, least: 'above' },
  { key: 'roll', label: phrase`A roll of fabric`, least: 'above' },
  { key: 'kerf', label: phrase`What a cut takes`, least: 'zero' },
  { key: 'gravel', label: phrase`Gravel under every post`, least: 'zero' },
] as const satisfies readonly {
  readonly key: LengthSetting | 'gravel';
  readonly label: string;
  readonly least: 'above' | 'zero';
}[];

const sourceText = (key: LengthSetting | 'gravel'): string =>
  key === 'gravel'
    ? phrase`Company rule.`
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
                ? change(phrase`Change counting`, { [key]: value })
                : least === 'zero'
                  ? phrase`${label}: expected 0 or more`
                  : phrase`${label}: expected more than 0`
            }
          />
          <p className="note">{sourceText(key)}</p>
        </div>
      ))}
      <div className="stack">
        <MaybeLengthField
          label={phrase`A stick that posts are cut from`}
          value={counting.postStick}
          style={style}
          note={phrase`Empty where posts are bought cut.`}
          onEnter={(postStick) =>
            postStick === null || postStick > 0
              ? change(phrase`Change counting`, { postStick })
              : phrase`A stick: expected more than 0, or nothing`
          }
        />
      </div>
      <div className="stack">
        <ChoiceField
          label={phrase`Sticks of rail are joined`}
          value={counting.railJoint}
          choices={[
            { value: 'swaged', label: phrase`Swaged: one into the next` },
            { value: 'sleeve', label: phrase`By a sleeve` },
          ]}
          onChoose={(railJoint) => void change(phrase`Change counting`, { railJoint })}
        />
      </div>
      <div className="stack">
        <ChoiceField
          label={phrase`Bags of dry concrete`}
          value={String(counting.bag)}
          choices={concreteBags.map(({ pounds, makes }) => ({
            value: String(pounds),
            label: phrase`${pounds} lb, makes ${makes} cu ft`,
          }))}
          onChoose={(chosen) => {
            const bag = concreteBags.find(({ pounds }) => String(pounds) === chosen);
            if (bag !== undefined) void change(phrase`Change counting`, { bag: bag.pounds });
          }}
        />
        <p className="note">{concreteBagSource.text}.</p>
      </div>
    </div>
  );
};
