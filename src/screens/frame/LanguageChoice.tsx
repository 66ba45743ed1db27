import { useState } from 'react';
import { languages, languageWords, type Language } from '../../phrases/languages.ts';
import { language as spoken } from '../../phrases/speak.ts';
import { useBench } from '../bench.ts';
import { speakAnew } from './speakAnew.ts';

const codes = Object.keys(languages) as Language[];

/**
 * The language of the screen. Who cannot read the one that is spoken finds the choice by its name in each
 * language, and each language by what it calls itself.
 */
export const LanguageChoice = () => {
  const bench = useBench();
  const [fault, setFault] = useState<string | null>(null);
  const choose = (next: Language) => {
    if (next !== spoken()) void speakAnew(bench, next).then(setFault);
  };
  const named = codes.map((code) => languageWords[code]).join(' · ');
  return (
    <section aria-label={named}>
      <h3>
        {codes.map((code, n) => (
          <span key={code} lang={code}>
            {n > 0 && ' · '}
            {languageWords[code]}
          </span>
        ))}
      </h3>
      <div className="choices" role="group" aria-label={named}>
        {codes.map((code) => (
          <button
            key={code}
            type="button"
            lang={code}
            aria-pressed={code === spoken()}
            onClick={() => choose(code)}
          >
            {languages[code]}
          </button>
        ))}
      </div>
      {fault !== null && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
    </section>
  );
};
