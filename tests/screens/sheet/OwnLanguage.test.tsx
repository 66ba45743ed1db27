import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { Language } from '../../../src/phrases/languages.ts';
import { BenchContext, type Bench } from '../../../src/screens/bench.ts';
import { OwnLanguage } from '../../../src/screens/sheet/OwnLanguage.tsx';
import { createSession } from '../../../src/store/session.ts';
import { samplePlans } from '../../store/samplePlans.ts';

/** What is said beside pages and tables while sheets are in a language. */
const saidWith = (language: Language | null): string => {
  const session = createSession(samplePlans);
  session.setState(({ sheet }) => ({ sheet: { ...sheet, language } }));
  return renderToStaticMarkup(
    <BenchContext value={{ session } as unknown as Bench}>
      <OwnLanguage of="pages" />
      <OwnLanguage of="tables" />
    </BenchContext>,
  );
};

describe('what is made on the screen', () => {
  it('[A19] says in which language it is where sheets are in another', () => {
    const said = saidWith('es');
    expect(said).toContain('Written in English, as the screen is; crew sheets are in Español.');
    expect(said).toContain('Tables as CSV are written in English');
  });

  it('[A19] says nothing of it where there is one language', () => {
    expect(saidWith('en')).toBe('');
    expect(saidWith(null)).toBe('');
  });
});
