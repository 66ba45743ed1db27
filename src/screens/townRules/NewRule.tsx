import { useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import type { TownRule } from '../../site/townRule.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { RuleForm } from './RuleForm.tsx';

interface Props {
  /** The town that a new rule begins with; empty for none. */
  readonly town: string;
  readonly style: LengthStyle;
  readonly onAdd: (rule: TownRule) => string | null;
}

/** The key for one more rule, and its form. */
export const NewRule = ({ town, style, onAdd }: Props) => {
  const [open, setOpen] = useState(false);
  if (!open) {
    return (
      <div className="choices">
        <button type="button" onClick={() => setOpen(true)}>{phrase`Add a rule`}</button>
      </div>
    );
  }
  return (
    <RuleForm
      title={phrase`New rule`}
      rule={{ town, measure: 'fence no higher than', limit: null, words: '', source: '' }}
      style={style}
      take={phrase`Add it`}
      onTake={(rule) => {
        const fault = onAdd(rule);
        if (fault === null) setOpen(false);
        return fault;
      }}
      onLeave={() => setOpen(false)}
    />
  );
};
