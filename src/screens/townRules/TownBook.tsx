import '../book/book.css';
import { phrase } from '../../phrases/phrase.ts';
import { useBench, useSite, useTownBook } from '../bench.ts';
import { BookUndo } from '../book/BookUndo.tsx';
import { changeBook } from '../book/changeBook.ts';
import { freshId } from '../book/freshId.ts';
import { SheetOver } from '../frame/SheetOver.tsx';
import { NewRule } from './NewRule.tsx';
import { RuleTable } from './RuleTable.tsx';
import { TownRuleFiles } from './TownRuleFiles.tsx';

/** The rules of the towns that the company works in, laid over the screen. */
export const TownBook = ({ onClose }: { readonly onClose: () => void }) => {
  const { townBook } = useBench();
  const rules = useTownBook();
  const { lengths } = useSite();
  const empty = Object.keys(rules).length === 0;
  return (
    <SheetOver title={phrase`Book of town rules`} onClose={onClose}>
      <p className="note">{phrase`Kept on this device for every site, as your company types it: ask the town, and write down where it says so. Take a town’s rules over to a yard on its card.`}</p>
      <BookUndo book={townBook} />
      <section aria-label={phrase`Rules by town`}>
        <NewRule
          town=""
          style={lengths}
          onAdd={(rule) =>
            changeBook(townBook, phrase`Add rule of ${rule.town}`, { [freshId('town-rule')]: rule })
          }
        />
        {empty && (
          <p className="note">{phrase`No rules yet. Add one, or import a CSV file with the columns Town, Measure, Limit, Words and Source.`}</p>
        )}
        <RuleTable
          rules={rules}
          style={lengths}
          onChange={(id, rule) =>
            changeBook(townBook, phrase`Change rule of ${rule.town}`, { [id]: rule })
          }
          onRemove={(id, { town }) =>
            void changeBook(townBook, phrase`Remove rule of ${town}`, { [id]: null })
          }
        />
      </section>
      <TownRuleFiles />
    </SheetOver>
  );
};
