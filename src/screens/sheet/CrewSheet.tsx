import './sheet.css';
import { useBench, useSession } from '../bench.ts';
import { Cautions } from '../Cautions.tsx';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { PaperField } from './PaperField.tsx';
import { PagePreview } from './PagePreview.tsx';
import { SheetKeys } from './SheetKeys.tsx';
import { TakeOutKeys } from './TakeOutKeys.tsx';
import { useSheetPages } from './useSheetPages.ts';

const ways = [
  { value: 'fitting', label: 'For the larger plan' },
  { value: 'portrait', label: 'Upright' },
  { value: 'landscape', label: 'Wide' },
] as const;

/** The screen of the dimensioned drawing set: what it is printed on, its pages, its files. */
export const CrewSheet = () => {
  const { session } = useBench();
  const sheet = useSession((state) => state.sheet);
  const { pages, siteText } = useSheetPages();
  return (
    <div className="page">
      <div className="print">
        <PaperField />
        <ChoiceField
          label="Paper turned"
          value={sheet.orientation}
          choices={ways}
          onChoose={(orientation) => session.setState({ sheet: { ...sheet, orientation } })}
        />
        <SheetKeys pages={pages} siteText={siteText} />
      </div>
      <TakeOutKeys />
      <p className="note" aria-live="polite">
        {pages.length} {pages.length === 1 ? 'page' : 'pages'}, as they will be printed.
      </p>
      {pages.map((page) => (
        <PagePreview key={page.title} page={page} />
      ))}
      <Cautions />
    </div>
  );
};
