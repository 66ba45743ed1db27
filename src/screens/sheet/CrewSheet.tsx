import './sheet.css';
import { useMemo, useState } from 'react';
import { dpiRange } from '../../exporters/png/dpiRange.ts';
import { missingLetters } from '../../drawing/missingLetters.ts';
import { missingLettersText } from '../../drawing/missingLettersText.ts';
import { phrase } from '../../phrases/phrase.ts';
import { languages, type Language } from '../../phrases/languages.ts';
import { language as screenSpeaks } from '../../phrases/speak.ts';
import { useBench, useSession } from '../bench.ts';
import { Cautions } from '../Cautions.tsx';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { GoToPage } from './GoToPage.tsx';
import { OwnLanguage } from './OwnLanguage.tsx';
import { PaperField } from './PaperField.tsx';
import { PagePreview } from './PagePreview.tsx';
import { SheetKeys } from './SheetKeys.tsx';
import { SheetStanding } from './SheetStanding.tsx';
import { TakeOutKeys } from './TakeOutKeys.tsx';
import { useSheetPages } from './useSheetPages.ts';

const ways = [
  { value: 'fitting', label: phrase`For the larger plan` },
  { value: 'portrait', label: phrase`Upright` },
  { value: 'landscape', label: phrase`Wide` },
] as const;

const readers = [
  { value: 'all', label: phrase`Everyone: whole set` },
  { value: 'rep', label: phrase`Sales rep` },
  { value: 'office', label: phrase`Office` },
  { value: 'crew', label: phrase`Crew` },
] as const;

const spoken = (Object.keys(languages) as Language[]).map((value) => ({
  value,
  label: languages[value],
}));

const resolutions = [dpiRange.least, 100, dpiRange.usual, 300, dpiRange.most].map((dpi) => ({
  value: String(dpi),
  label: phrase`${dpi} dpi`,
}));

/** The screen of the dimensioned drawing set: whose it is, what it is printed on, its pages, its files. */
export const CrewSheet = () => {
  const { session } = useBench();
  const sheet = useSession((state) => state.sheet);
  const [dpi, setDpi] = useState<number>(dpiRange.usual);
  const set = useSheetPages();
  const { drawn } = set;
  const lacks = useMemo(
    () =>
      drawn === null ? null : missingLettersText(missingLetters(drawn.call.site, drawn.pages)),
    [drawn],
  );
  return (
    <div className="page">
      <div className="print">
        <ChoiceField
          label={phrase`Set for`}
          value={sheet.reader}
          choices={readers}
          onChoose={(reader) => session.setState({ sheet: { ...sheet, reader } })}
        />
        <PaperField />
        <ChoiceField
          label={phrase`Paper turned`}
          value={sheet.orientation}
          choices={ways}
          onChoose={(orientation) => session.setState({ sheet: { ...sheet, orientation } })}
        />
        <ChoiceField
          label={phrase`Language of the sheets`}
          value={sheet.language ?? screenSpeaks()}
          choices={spoken}
          onChoose={(language) => session.setState({ sheet: { ...sheet, language } })}
        />
        <SheetKeys drawn={set.stands.is === 'drawn' ? drawn : null} />
      </div>
      <OwnLanguage of="tables" />
      <TakeOutKeys />
      <SheetStanding set={set} />
      {lacks !== null && (
        <p className="note" role="status">
          {lacks}
        </p>
      )}
      <div className="print">
        <GoToPage pages={drawn?.pages ?? []} />
        <ChoiceField
          label={phrase`PNG resolution`}
          value={String(dpi)}
          choices={resolutions}
          onChoose={(value) => setDpi(Number(value))}
        />
      </div>
      {drawn?.pages.map((page) => (
        <PagePreview key={page.title} page={page} dpi={dpi} />
      ))}
      <Cautions />
    </div>
  );
};
