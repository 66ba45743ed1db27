import { useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { addTownRule } from '../../site/edits/addTownRule.ts';
import { changeTownRule } from '../../site/edits/changeTownRule.ts';
import { removeTownRule } from '../../site/edits/removeTownRule.ts';
import { takeTownRules } from '../../site/edits/takeTownRules.ts';
import { kept } from '../../site/kept.ts';
import { sameTown } from '../../site/sameTown.ts';
import type { TownRule } from '../../site/townRule.ts';
import { townRulesToTake } from '../../site/townRulesToTake.ts';
import { useBench, useSession, useSite, useTownBook } from '../bench.ts';
import { changeBook } from '../book/changeBook.ts';
import { freshId } from '../book/freshId.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { useDo, useEdit } from '../yard/cards/useEdit.ts';
import { NewRule } from './NewRule.tsx';
import { rulesByTown } from './rulesByTown.ts';
import { RuleTable, type OfRule } from './RuleTable.tsx';
import { TownBookKey } from './TownBookKey.tsx';

/** A town of the book, and the key that takes over what of its rules the site lacks. */
const FromBook = () => {
  const site = useSite();
  const book = useTownBook();
  const make = useDo();
  const towns = rulesByTown(book).map(({ town }) => town);
  const [chosen, setChosen] = useState<string | null>(null);
  const town = towns.find((one) => one === chosen) ?? towns[0];
  if (town === undefined) return <p className="note">{phrase`The book of town rules is empty.`}</p>;
  const more = Object.keys(townRulesToTake(site, book, town)).length;
  return (
    <>
      <ChoiceField
        label={phrase`Town of the book`}
        value={town}
        choices={towns.map((value) => ({ value, label: value }))}
        onChoose={setChosen}
      />
      <div className="choices">
        <button
          type="button"
          disabled={more === 0}
          onClick={() =>
            make(phrase`Take the rules of ${town}`, (was) => takeTownRules(was, book, town))
          }
        >
          {more === 0 ? phrase`All its rules are here` : phrase`Take ${more} of its rules over`}
        </button>
      </div>
    </>
  );
};

/** A rule of the site and the book: as it has it, or what could be taken and kept. */
const BookSays = ({ id, rule }: OfRule) => {
  const { townBook, session } = useBench();
  const book = useTownBook();
  const make = useDo();
  if (Object.values<TownRule>(book).some((one) => kept(one, rule) === one))
    return <p className="note">{phrase`As the book has it.`}</p>;
  const found = Object.hasOwn(book, id) ? book[id] : undefined;
  // a file of others may have another rule under the id
  const theirs = found !== undefined && sameTown(found.town, rule.town) ? found : undefined;
  const place = found === theirs ? id : freshId('town-rule');
  const keep = () => {
    const fault = changeBook(townBook, phrase`Keep rule of ${rule.town}`, { [place]: rule });
    session.setState({ say: fault ?? phrase`In the book of town rules: ${rule.town}` });
  };
  return (
    <>
      {theirs !== undefined && (
        <button
          type="button"
          onClick={() =>
            make(phrase`Take rule of ${theirs.town}`, (was) => changeTownRule(was, id, theirs))
          }
        >{phrase`Take the book’s`}</button>
      )}
      <button type="button" onClick={keep}>{phrase`Keep in the book`}</button>
    </>
  );
};

/** The rules of towns that the site carries. Shown while nothing is selected. */
export const SiteRules = () => {
  const selection = useSession((state) => state.selection);
  const { townRules, lengths, lines } = useSite();
  const edit = useEdit();
  const make = useDo();
  const rules = Object.values<TownRule>(townRules);
  if (selection !== null || (Object.keys(lines).length === 0 && rules.length === 0)) return null;
  return (
    <section aria-label={phrase`Rules of the town`}>
      <details className="more">
        <summary>{phrase`Rules of the town`}</summary>
        <div className="stack">
          <FromBook />
          <RuleTable
            rules={townRules}
            style={lengths}
            onChange={(id, rule) =>
              edit(phrase`Change rule of ${rule.town}`, (was) => changeTownRule(was, id, rule))
            }
            onRemove={(id, { town }) =>
              make(phrase`Remove rule of ${town}`, (was) => removeTownRule(was, id))
            }
            more={BookSays}
          />
          <NewRule
            town={rules.at(-1)?.town ?? ''}
            style={lengths}
            onAdd={(rule) =>
              edit(phrase`Add rule of ${rule.town}`, (was) =>
                addTownRule(was, rule, freshId('town-rule')),
              )
            }
          />
          <div className="choices">
            <TownBookKey />
          </div>
        </div>
      </details>
    </section>
  );
};
