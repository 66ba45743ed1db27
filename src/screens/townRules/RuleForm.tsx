import { useEffect, useRef, useState } from 'react';
import { measureWords } from '../../engine/checks/measureWords.ts';
import { phrase, sentenceCase } from '../../phrases/phrase.ts';
import { townMeasures, type TownRule } from '../../site/townRule.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { sizeText } from '../fields/sizeText.ts';
import { TextField } from '../fields/TextField.tsx';
import { typedRule, type TypedRule } from './typedRule.ts';

interface Props {
  /** What the form is called. */
  readonly title: string;
  readonly rule: TownRule;
  readonly style: LengthStyle;
  /** What the key that takes the rule says. */
  readonly take: string;
  /** Takes the rule; gives back null, or the one line why not. */
  readonly onTake: (rule: TownRule) => string | null;
  readonly onLeave: () => void;
}

const words = 'words';

const choices = [
  ...townMeasures.map((measure) => ({
    value: measure,
    label: sentenceCase(measureWords[measure]),
  })),
  { value: words, label: phrase`In words alone` },
] as const;

const typing = (rule: TownRule, style: LengthStyle): TypedRule => ({
  ...rule,
  limit: rule.limit === null ? '' : sizeText(rule.limit, style),
});

/** A rule of a town in its fields; it counts when the key is pressed. */
export const RuleForm = ({ title, rule, style, take, onTake, onLeave }: Props) => {
  const [typed, setTyped] = useState(() => typing(rule, style));
  const [fault, setFault] = useState<string | null>(null);
  const form = useRef<HTMLDivElement>(null);
  // the key that opened the form is gone: who goes by keys goes on here
  useEffect(() => form.current?.focus(), []);
  const put = (fields: Partial<TypedRule>) => {
    // the line of a fault stays till the key is pressed anew: gone before, it would move the key away
    setTyped({ ...typed, ...fields });
    return null;
  };
  const done = () => {
    const found = typedRule(typed, style);
    setFault(found.ok ? onTake(found.value) : found.reason);
  };
  return (
    <div ref={form} tabIndex={-1} className="stack rule-form" role="group" aria-label={title}>
      <TextField label={phrase`Town`} value={typed.town} onEnter={(town) => put({ town })} />
      <ChoiceField
        label={phrase`What it limits`}
        value={typed.measure ?? words}
        choices={choices}
        onChoose={(chosen) => void put({ measure: chosen === words ? null : chosen })}
      />
      {typed.measure !== null && (
        <TextField label={phrase`Limit`} value={typed.limit} onEnter={(limit) => put({ limit })} />
      )}
      <TextField
        label={phrase`In words`}
        lines={2}
        value={typed.words}
        note={
          typed.measure === null
            ? phrase`What the town asks.`
            : phrase`Where it holds, if not all over.`
        }
        onEnter={(text) => put({ words: text })}
      />
      <TextField
        label={phrase`Where the town says so`}
        value={typed.source}
        onEnter={(source) => put({ source })}
      />
      {fault !== null && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      <div className="choices">
        <button type="button" className="chief" onClick={done}>
          {take}
        </button>
        <button type="button" onClick={onLeave}>{phrase`Leave it`}</button>
      </div>
    </div>
  );
};
