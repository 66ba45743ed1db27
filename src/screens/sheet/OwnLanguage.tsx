import { languages } from '../../phrases/languages.ts';
import { phrase } from '../../phrases/phrase.ts';
import { language } from '../../phrases/speak.ts';
import { useSession } from '../bench.ts';

interface Props {
  /** What is written here: pages, or tables as CSV. */
  readonly of: 'pages' | 'tables';
}

/** Where something is written in the language of the screen, says so while sheets are in another. */
export const OwnLanguage = ({ of }: Props) => {
  const sheets = useSession((state) => state.sheet.language);
  if (sheets === null || sheets === language()) return null;
  const [here, there] = [languages[language()], languages[sheets]];
  return (
    <p className="note">
      {of === 'pages'
        ? phrase`Written in ${here}, as the screen is; crew sheets are in ${there}.`
        : phrase`Tables as CSV are written in ${here}, as the screen is; crew sheets are in ${there}.`}
    </p>
  );
};
