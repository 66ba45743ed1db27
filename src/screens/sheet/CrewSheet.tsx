import './sheet.css';
import { papers } from '../../drawing/sheet/papers.ts';
import { sheetPapers, type SheetOptions } from '../../store/sheetOptions.ts';
import { useBench, useSession } from '../bench.ts';
import { Cautions } from '../Cautions.tsx';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { PagePreview } from './PagePreview.tsx';
import { SheetKeys } from './SheetKeys.tsx';
import { TakeOutKeys } from './TakeOutKeys.tsx';
import { useSheetPages } from './useSheetPages.ts';

const paperChoices = sheetPapers.map((value) => ({ value, label: papers[value].label }));

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
  const choose = (change: Partial<SheetOptions>) =>
    session.setState({ sheet: { ...sheet, ...change } });
  return (
    <div className="page">
      <div className="print">
        <ChoiceField
          label="Paper"
          value={sheet.paper}
          choices={paperChoices}
          onChoose={(paper) => choose({ paper })}
        />
        <ChoiceField
          label="Paper turned"
          value={sheet.orientation}
          choices={ways}
          onChoose={(orientation) => choose({ orientation })}
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
