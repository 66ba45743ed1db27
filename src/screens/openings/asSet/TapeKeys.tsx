import { useEffect, useState, type FocusEvent, type ReactNode } from 'react';
import { Keypad } from '../../yard/Keypad.tsx';
import { phrase } from '../../../phrases/phrase.ts';

const tapeField = ({ target }: FocusEvent): HTMLInputElement | null =>
  target instanceof HTMLInputElement && target.inputMode === 'none' ? target : null;

/** Types into a field as a keyboard would, so that whoever listens to it hears of it. */
const typeInto = (field: HTMLInputElement, change: (text: string) => string): void => {
  field.setRangeText(change(field.value), 0, field.value.length, 'end');
  field.dispatchEvent(new InputEvent('input', { bubbles: true }));
};

/** The next field that can be seen in the same record; the last one is left. */
const goOn = (field: HTMLInputElement): void => {
  const fields = [...(field.closest('.found')?.querySelectorAll('input') ?? [])].filter(
    (one) => one.offsetParent !== null,
  );
  const next = fields[fields.indexOf(field) + 1];
  if (next === undefined) field.blur();
  else next.focus();
};

/** Fields, and under them the keys of a tape while a finger types a length into one of them. */
export const TapeKeys = ({ children }: { readonly children: ReactNode }) => {
  const [field, setField] = useState<HTMLInputElement | null>(null);
  // the keys must not lie over the field that they are for
  useEffect(() => {
    field?.scrollIntoView({ block: 'nearest' });
  }, [field]);
  return (
    <div
      className="found"
      onFocus={(event) => setField(tapeField(event))}
      onBlur={() => setField(null)}
    >
      {children}
      {field !== null && (
        <div className="tape-keys" onPointerDown={(event) => event.preventDefault()}>
          <Keypad onKey={(change) => typeInto(field, change)} />
          <div className="tape-ends">
            <button type="button" onClick={() => field.blur()}>
              {phrase`Done`}
            </button>
            <button type="button" className="chief" onClick={() => goOn(field)}>
              {phrase`Next`}
            </button>
          </div>
        </div>
      )}
    </div>
  );
};
