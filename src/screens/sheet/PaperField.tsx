import { papers } from '../../drawing/sheet/papers.ts';
import { sheetPapers } from '../../store/sheetOptions.ts';
import { useBench, useSession } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';

const choices = sheetPapers.map((value) => ({ value, label: papers[value].label }));

/** The paper that sheets, orders and proposals are printed on. */
export const PaperField = () => {
  const { session } = useBench();
  const sheet = useSession((state) => state.sheet);
  return (
    <ChoiceField
      label="Paper"
      value={sheet.paper}
      choices={choices}
      onChoose={(paper) => session.setState({ sheet: { ...sheet, paper } })}
    />
  );
};
