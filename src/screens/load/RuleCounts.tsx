import { phrase } from '../../phrases/phrase.ts';
import { setCounting } from '../../site/edits/setCounting.ts';
import { countRules, type CountRule } from '../../trade/countRules.ts';
import { selling } from '../../trade/selling.ts';
import { quotedText } from '../../units/quotedText.ts';
import { useSite } from '../bench.ts';
import { TextField } from '../fields/TextField.tsx';
import { useEdit } from '../yard/cards/useEdit.ts';

const usualTimes = ({ how }: CountRule): number => ('times' in how ? how.times : 1);

const numberIn = (text: string, most: number): number | null => {
  const bare = text.trim();
  return /^\d{1,4}(?:\.\d{1,3})?$/.test(bare) && Number(bare) <= most ? Number(bare) : null;
};

/** The map without an entry that says what is usual anyway. */
const withEntry = (
  map: Readonly<Record<string, number>>,
  id: string,
  value: number | null,
): Record<string, number> => {
  const others = Object.entries(map).filter(([key]) => key !== id);
  return Object.fromEntries(value === null ? others : [...others, [id, value]]);
};

/** One rule: how many it takes, and how many more go on the truck. */
const RuleRow = ({ rule }: { readonly rule: CountRule }) => {
  const { counting } = useSite();
  const edit = useEdit();
  const { id, item } = rule;
  const usual = usualTimes(rule);
  const spare = selling.find(({ code }) => code === id)?.spare ?? 0;
  const share = counting.spares[id] ?? spare;
  return (
    <li className="stack">
      <p>
        <b>{item}</b> {rule.says} <span className="note">{rule.source.text}.</span>
      </p>
      <div className="pair">
        <TextField
          label={phrase`Takes, usually ${usual}`}
          keys="decimal"
          value={String(counting.times[id] ?? usual)}
          onEnter={(text) => {
            const times = text.trim() === '' ? usual : numberIn(text, 1000);
            if (times === null)
              return phrase`${item} ${quotedText(text)}: expected a number from 0 to 1000`;
            return edit(phrase`Change counting`, (was) =>
              setCounting(was, {
                times: withEntry(was.counting.times, id, times === usual ? null : times),
              }),
            );
          }}
        />
        <TextField
          label={phrase`Spare, percent`}
          keys="decimal"
          value={String(Number((100 * share).toFixed(1)))}
          onEnter={(text) => {
            const percent = text.trim() === '' ? 100 * spare : numberIn(text, 100);
            if (percent === null)
              return phrase`${item} ${quotedText(text)}: expected 0 to 100 percent`;
            return edit(phrase`Change counting`, (was) =>
              setCounting(was, {
                spares: withEntry(
                  was.counting.spares,
                  id,
                  percent === 100 * spare ? null : percent / 100,
                ),
              }),
            );
          }}
        />
      </div>
    </li>
  );
};

/** Every rule of counting with what the company takes by it; 0 leaves its item off the truck. */
export const RuleCounts = () => (
  <ul className="plain rules">
    {countRules.map((rule) => (
      <RuleRow key={rule.id} rule={rule} />
    ))}
  </ul>
);
