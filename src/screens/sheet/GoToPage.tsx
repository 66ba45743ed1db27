import type { Page } from '../../drawing/sheet/page.ts';
import { phrase } from '../../phrases/phrase.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { pagePlace } from './pagePlace.ts';

/** A set of so few pages is scrolled through. */
const few = 4;

/** Scrolls to a page of a long set; the titles are its index. */
export const GoToPage = ({ pages }: { readonly pages: readonly Page[] }) => {
  if (pages.length < few) return null;
  const choices = [
    { value: '', label: phrase`Choose a page` },
    ...pages.map(({ title }) => ({ value: title, label: title })),
  ];
  return (
    <ChoiceField
      label={phrase`Go to page`}
      value=""
      choices={choices}
      onChoose={(title) => document.getElementById(pagePlace(title))?.scrollIntoView()}
    />
  );
};
