import { townRuleSchema } from './townRule.ts';
import { townRuleFault } from './townRuleFault.ts';

/**
 * A rule of a town that says something, as `townRuleFault` has it. A file may hold others; edits and
 * books take these alone.
 */
export const soundTownRule = townRuleSchema.superRefine((rule, context) => {
  const fault = townRuleFault(rule);
  if (fault === null) return;
  const { field, expected } = fault;
  context.addIssue({ code: 'custom', path: [field], message: expected });
});
