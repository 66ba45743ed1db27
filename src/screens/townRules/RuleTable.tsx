import './townRules.css';
import { useState, type ComponentType } from 'react';
import { townRuleText } from '../../engine/checks/townRuleText.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { TownRuleId } from '../../site/ids.ts';
import type { TownRule } from '../../site/townRule.ts';
import type { TownRules } from '../../site/townRules.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { RuleForm } from './RuleForm.tsx';
import { rulesByTown, type RuleEntry } from './rulesByTown.ts';

/** One rule. */
export interface OfRule {
  readonly id: TownRuleId;
  readonly rule: TownRule;
}

interface Props {
  readonly rules: TownRules;
  readonly style: LengthStyle;
  /** Takes the changed rule; gives back null, or the one line why not. */
  readonly onChange: (id: TownRuleId, rule: TownRule) => string | null;
  readonly onRemove: (id: TownRuleId, rule: TownRule) => void;
  /** What else can be done with a rule. */
  readonly more?: ComponentType<OfRule>;
}

interface RowProps extends Omit<Props, 'rules'> {
  readonly entry: RuleEntry;
}

const Row = ({ entry: [id, rule], style, onChange, onRemove, more: More }: RowProps) => {
  const [open, setOpen] = useState(false);
  const { asks, source } = townRuleText(rule, style);
  const change = (next: TownRule) => {
    const fault = onChange(id, next);
    if (fault === null) setOpen(false);
    return fault;
  };
  return (
    <tbody>
      <tr>
        <td>{asks}</td>
        <td className="source">{source}</td>
      </tr>
      <tr>
        <td colSpan={2}>
          {open ? (
            <RuleForm
              title={phrase`Change: ${asks}`}
              rule={rule}
              style={style}
              take={phrase`Keep it so`}
              onTake={change}
              onLeave={() => setOpen(false)}
            />
          ) : (
            <div className="choices">
              <button
                type="button"
                aria-label={phrase`Edit: ${asks}`}
                onClick={() => setOpen(true)}
              >{phrase`Edit`}</button>
              <button
                type="button"
                aria-label={phrase`Remove: ${asks}`}
                onClick={() => onRemove(id, rule)}
              >{phrase`Remove`}</button>
              {More !== undefined && <More id={id} rule={rule} />}
            </div>
          )}
        </td>
      </tr>
    </tbody>
  );
};

/** Rules of towns, a table for each town, in which every rule can be edited and removed. */
export const RuleTable = ({ rules, ...rest }: Props) =>
  rulesByTown(rules).map(({ town, rules: own }) => (
    <table key={town} className="rules">
      <caption>{town}</caption>
      <thead>
        <tr>
          <th scope="col">{phrase`Asks`}</th>
          <th scope="col">{phrase`Where it says so`}</th>
        </tr>
      </thead>
      {own.map((entry) => (
        <Row key={entry[0]} entry={entry} {...rest} />
      ))}
    </table>
  ));
