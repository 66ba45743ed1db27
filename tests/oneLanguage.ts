import { afterAll, expect } from 'vitest';
import { language } from '../src/phrases/speak.ts';

/** Tests that share their modules share a language: one that speaks another has to run alone (vite.config.ts). */
afterAll(() => expect(language()).toBe('en'));
