import type { FenceSpec } from '../../../site/fenceSpec.ts';
import { barbedArms, leastBarbed } from '../../../trade/barbedWire.ts';
import { quotedText } from '../../../units/quotedText.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { phrase, phraseOf } from '../../../phrases/phrase.ts';

interface Props {
  readonly spec: FenceSpec;
  readonly change: (label: string, fields: Partial<FenceSpec>) => string | null;
}

const most = 12;

const arms = [
  { value: 'upright', label: phraseOf('arms')`Upright` },
  { value: 'outward', label: phrase`Lean outward` },
  { value: 'inward', label: phrase`Lean inward` },
  { value: 'both ways', label: phrase`Both ways` },
] as const;

/** Barbed wire over the fabric: how many strands, and how their arms lean. */
export const BarbedFields = ({ spec, change }: Props) => {
  const { barbedWire } = spec;
  const label = phrase`Change barbed wire`;
  const enter = (text: string): string | null => {
    if (text.trim() === '' || text.trim() === '0') return change(label, { barbedWire: null });
    const strands = /^\d{1,2}$/.test(text.trim()) ? Number(text) : NaN;
    if (strands >= 1 && strands <= most) {
      return change(label, { barbedWire: { arms: barbedWire?.arms ?? 'upright', strands } });
    }
    return phrase`Barbed wire ${quotedText(text)}: expected 1 to ${most} strands, or nothing for none`;
  };
  return (
    <div className="stack">
      <TextField
        label={phrase`Strands of barbed wire`}
        keys="decimal"
        value={barbedWire === null ? '' : String(barbedWire.strands)}
        note={phrase`Over the fabric; empty for none.`}
        onEnter={enter}
      />
      {barbedWire !== null && (
        <>
          <ChoiceField
            label={phrase`Arms`}
            value={barbedWire.arms}
            choices={arms}
            onChoose={(chosen) =>
              void change(label, { barbedWire: { ...barbedWire, arms: chosen } })
            }
          />
          <p className="note">
            {phrase`${barbedArms.source.text}. ${leastBarbed.source.text}. Many towns forbid it.`}
          </p>
        </>
      )}
    </div>
  );
};
