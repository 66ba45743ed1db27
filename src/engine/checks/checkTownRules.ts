import type { TownRuleId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { TownRule } from '../../site/townRule.ts';
import type { Flag } from '../flag.ts';
import type { LineLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { oneLine } from './names.ts';
import { townMeasures } from './townMeasures.ts';
import { townRuleText } from './townRuleText.ts';
import { phrase } from '../../phrases/phrase.ts';

/** As much of what a rule asks as a flag says, in characters; the table of rules has all. Ours. */
const mostSaid = 400;

/** What a rule asks and where that stands: `Town: measure limit; words (source)`. */
const asked = (rule: TownRule, { lengths }: Site): string => {
  const { asks, source } = townRuleText(rule, lengths);
  const short = asks.length <= mostSaid ? asks : `${asks.slice(0, mostSaid - 1)}…`;
  return phrase`${oneLine(rule.town)}: ${short} (${source})`;
};

/** A rule that nothing of the plan can be compared with, told once, where the first line begins. */
const toMind = (
  rule: TownRule,
  site: Site,
  laid: LaidLines,
): Pick<Flag, 'place' | 'at' | 'message'>[] => {
  const first = Object.values<LineLayout>(laid.lines).find(({ legs }) => legs.length > 0);
  const at = first?.legs[0]?.start;
  if (first === undefined || at === undefined) return [];
  const message = phrase`${asked(rule, site)}: not compared with the plan; mind it.`;
  return [{ place: { kind: 'line', id: first.id }, at, message }];
};

const flagsOfRule = (id: TownRuleId, rule: TownRule, site: Site, laid: LaidLines): Flag[] => {
  // each rule by its id, so that two of one town can be accepted apart
  const name = `rule of a town, ${id}`;
  if (rule.measure === null || rule.limit === null)
    return toMind(rule, site, laid).map((told) => ({ level: 'caution', rule: name, ...told }));
  return townMeasures[rule.measure](rule.limit, site, laid).map(({ place, at, has, mend }) => ({
    level: 'settle',
    rule: name,
    place,
    at,
    message: phrase`${has}. ${asked(rule, site)}.`,
    ...(mend === undefined ? {} : { mend }),
  }));
};

/**
 * What the rules of towns that a site carries ask, beside what the plan has: each place where a limit is
 * not kept once, with both lengths, the town and where it says so. Rules in words alone are told to be
 * minded. Whether a rule holds for this yard is for a person to say: its flags can be accepted.
 */
export const checkTownRules = (site: Site, laid: LaidLines): Flag[] =>
  (Object.entries(site.townRules) as [TownRuleId, TownRule][]).flatMap(([id, rule]) =>
    flagsOfRule(id, rule, site, laid),
  );
