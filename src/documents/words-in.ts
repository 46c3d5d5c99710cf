/** The word list of a language. */
import type { Language } from '../plan/model.ts';
import { english, type Words } from './words.ts';
import { german } from './words-de.ts';

const lists: Readonly<Record<Language, Words>> = { en: english, de: german };

export function wordsIn(language: Language = 'en'): Words {
  return lists[language];
}
