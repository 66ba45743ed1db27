import { papers, usualPaper, type PaperName } from '../../drawing/sheet/papers.ts';
import { phrase } from '../../phrases/phrase.ts';
import { sheetPapers } from '../../store/sheetOptions.ts';
import { useBench, useSession, useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';

/** Every paper by its name; the usual one says which that is. */
const choicesFor = (usual: PaperName) =>
  sheetPapers.map((value) => ({
    value,
    label: value === 'usual' ? phrase`Usual (${papers[usual].label})` : papers[value].label,
  }));

/** The paper that sheets, orders and proposals are printed on. */
export const PaperField = () => {
  const { session } = useBench();
  const sheet = useSession((state) => state.sheet);
  const { lengths } = useSite();
  return (
    <ChoiceField
      label={phrase`Paper`}
      value={sheet.paper}
      choices={choicesFor(usualPaper(lengths.system))}
      onChoose={(paper) => session.setState({ sheet: { ...sheet, paper } })}
    />
  );
};
