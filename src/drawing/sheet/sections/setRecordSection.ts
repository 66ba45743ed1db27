import type { Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import {
  leansForm,
  leavesForm,
  setFormTitles,
  widthsForm,
  type SetRows,
} from '../../tables/setForms.ts';
import { setPosts } from '../../tables/setPosts.ts';
import { nothing, type Stack } from '../flow/block.ts';
import { handRow } from '../flow/handRow.ts';
import { heading } from '../flow/heading.ts';
import { layForm, type FormColumn } from '../flow/layForm.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { oneBlock, under } from '../flow/stacks.ts';
import { unbroken } from '../flow/unbroken.ts';
import { phrase, phraseOf } from '../../../phrases/phrase.ts';
import { setHeadings, type SetColumn } from '../../tables/setColumns.ts';

const said = phrase`Write what was set, and type it in: the openings under Openings, As set by the crew. What is printed in a box is in the set record already. A lean is how far the top of a post stands into the opening, with a minus out of it; leaves and hinges only where they were measured again. The first post of an opening is the one named first. What is written of posts stays on this sheet.`;

/** Room for a hand by the heading of a column, paper inches; what is not listed is printed alone. Ours. */
const hands: Readonly<Partial<Record<SetColumn, number>>> = {
  top: 0.85,
  middle: 0.85,
  bottom: 0.85,
  by: 0.6,
  on: 0.8,
  'first lean': 0.8,
  'second lean': 0.8,
  hinges: 0.85,
  remark: 2,
  'set at': 1,
  'dug to': 0.75,
  plumb: 0.5,
  note: 1.4,
};

const columnOf = (name: SetColumn): FormColumn => ({
  heading: setHeadings[name],
  hand: hands[name] ?? 0,
  share: name === 'note' || name === 'remark' ? 6 : Number(name in hands && name !== 'plumb'),
  ...(name === 'plumb' ? { tick: true } : {}),
});

const formOf = (title: string, { columns, ...rest }: SetRows, width: number): Stack[] =>
  rest.rows.length === 0
    ? []
    : [layForm({ title, columns: columns.map(columnOf), ...rest }, width)];

/** Who set and who checked, and when, at the foot of the form. */
const signed = (width: number): Stack => {
  const blanks = (label: string) => [
    { label, hand: 2, known: '' },
    { label: phraseOf('day')`on`, hand: 0.9, known: '' },
  ];
  const space = { ...nothing, height: 0.12 };
  return oneBlock(
    stackBlocks([
      handRow(blanks(phrase`Set by`), width),
      space,
      handRow(blanks(phrase`Checked by`), width),
    ]),
    0.3,
  );
};

/**
 * A form in which the crew writes by hand what was set: every opening, then every post, then who and
 * when. What is in the set record is printed in. Nothing where there are no posts.
 */
export const setRecordSection = (site: Site, layout: Layout, width: number): Stack[] => {
  const posts = setPosts(site, layout);
  if (posts.rows.length === 0) return [];
  const intro = stackBlocks([heading(phrase`Set record`, width), ...unbroken(said, width)]);
  const forms = [
    ...formOf(setFormTitles.widths, widthsForm(site, layout), width),
    ...formOf(setFormTitles.leans, leansForm(site, layout), width),
    ...formOf(setFormTitles.leaves, leavesForm(site, layout), width),
    ...formOf(setFormTitles.posts, posts, width),
  ];
  return [...forms.map((form, n) => (n === 0 ? under(intro, form) : form)), signed(width)];
};
