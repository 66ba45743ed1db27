import { expect, it } from 'vitest';
import { SiteRules } from '../../../src/screens/townRules/SiteRules.tsx';
import { addTownRule } from '../../../src/site/edits/addTownRule.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../../engine/plainYard.ts';
import { shown } from '../yard/shown.tsx';

it('the card lists the rules of the yard with where each stands, and says of an empty book that it is', () => {
  expect(shown(bare, <SiteRules />)).toBe('');
  const yard = fence(bare, [
    [0, 0],
    [240, 0],
  ]);
  expect(shown(yard, <SiteRules />)).toContain('The book of town rules is empty.');
  const ruled = addTownRule(yard, {
    town: 'Inventedville',
    measure: 'fence no higher than',
    limit: inches(48),
    words: 'In front',
    source: '',
  });
  const markup = shown(ruled, <SiteRules />);
  expect(markup).toContain('<caption>Inventedville</caption>');
  expect(markup).toContain('fence no higher than 4&#x27;-0&quot;; In front');
  expect(markup).toContain('as the company has it, no source told');
  expect(markup).toContain('Keep in the book');
});
