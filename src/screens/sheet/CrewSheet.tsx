import './sheet.css';
import { useBench, useSession } from '../bench.ts';
import { Cautions } from '../Cautions.tsx';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { GoToPage } from './GoToPage.tsx';
import { PaperField } from './PaperField.tsx';
import { PagePreview } from './PagePreview.tsx';
import { SheetKeys } from './SheetKeys.tsx';
import { SheetStanding } from './SheetStanding.tsx';
import { TakeOutKeys } from './TakeOutKeys.tsx';
import { useSheetPages } from './useSheetPages.ts';

const ways = [
  { value: 'fitting', label: 'For the larger plan' },
  { value: 'portrait', label: 'Upright' },
  { value: 'landscape', label: 'Wide' },
] as const;

const readers = [
  { value: 'all', label: 'Everyone: whole set' },
  { value: 'rep', label: 'Sales rep' },
  { value: 'office', label: 'Office' },
  { value: 'crew', label: 'Crew' },
] as const;

/** The screen of the dimensioned drawing set: whose it is, what it is printed on, its pages, its files. */
export const CrewSheet = () => {
  const { session } = useBench();
  const sheet = useSession((state) => state.sheet);
  const set = useSheetPages();
  return (
    <div className="page">
      <div className="print">
        <ChoiceField
          label="Set for"
          value={sheet.reader}
          choices={readers}
          onChoose={(reader) => session.setState({ sheet: { ...sheet, reader } })}
        />
        <PaperField />
        <ChoiceField
          label="Paper turned"
          value={sheet.orientation}
          choices={ways}
          onChoose={(orientation) => session.setState({ sheet: { ...sheet, orientation } })}
        />
        <SheetKeys drawn={set.stands.is === 'drawn' ? set.drawn : null} />
      </div>
      <TakeOutKeys />
      <SheetStanding set={set} />
      <GoToPage pages={set.drawn?.pages ?? []} />
      {set.drawn?.pages.map((page) => (
        <PagePreview key={page.title} page={page} />
      ))}
      <Cautions />
    </div>
  );
};
