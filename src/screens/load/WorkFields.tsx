import { phrase } from '../../phrases/phrase.ts';
import { setWork } from '../../site/edits/setWork.ts';
import type { Work } from '../../site/work.ts';
import { labourSource, rockTimes } from '../../trade/labour.ts';
import { quotedText } from '../../units/quotedText.ts';
import { useSite } from '../bench.ts';
import { LengthField } from '../fields/LengthField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { useEdit } from '../yard/cards/useEdit.ts';
import { usePriceList } from './usePriceList.ts';

const percentIn = (text: string, most: number): number | null => {
  const bare = text.trim().replace(/ ?%$/, '');
  return /^\d{1,3}(?:\.\d)?$/.test(bare) && Number(bare) <= most ? Number(bare) / 100 : null;
};

/** What makes the work of this site more than setting fence. */
export const WorkFields = () => {
  const { work, lengths } = useSite();
  const edit = useEdit();
  const list = usePriceList();
  const own = list?.rock ?? null;
  const rock =
    own === null
      ? phrase`Each takes ${rockTimes} times as long: ours.`
      : phrase`Each takes ${own} times as long: the price list’s.`;
  const change = (fields: Partial<Work>) =>
    edit(phrase`Change work`, (was) => setWork(was, fields));
  const share = (label: string, key: 'rock' | 'access', most: number, note: string) => (
    <TextField
      label={label}
      keys="decimal"
      value={String(Number((100 * work[key]).toFixed(1)))}
      note={note}
      onEnter={(text) => {
        const value = text.trim() === '' ? 0 : percentIn(text, most);
        return value === null
          ? phrase`${label} ${quotedText(text)}: expected 0 to ${most} percent`
          : change({ [key]: value });
      }}
    />
  );
  return (
    <div className="stack">
      <div className="halves">
        <LengthField
          label={phrase`Old fence to take out`}
          value={work.tearOut}
          style={lengths}
          onEnter={(tearOut) =>
            tearOut >= 0 ? change({ tearOut }) : phrase`Old fence: expected 0 or more`
          }
        />
        {share(phrase`Holes in rock, percent`, 'rock', 100, rock)}
        {share(
          phrase`Longer for want of access, percent`,
          'access',
          400,
          phrase`No machine, far from the truck, in somebody’s garden.`,
        )}
        <TextField
          label={phrase`Of the work`}
          lines={3}
          value={work.remark}
          onEnter={(remark) => change({ remark })}
        />
      </div>
      {list === null && <p className="note">{labourSource.text}.</p>}
    </div>
  );
};
