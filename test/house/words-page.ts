/** The English word list as a file, to begin that of another language from. */
import { stringify } from 'yaml';
import { englishList } from '../../src/documents/words-en.ts';

const head = `# The words of the documents in English, made from src/documents/words-en.ts by \`npm run generate\`.
# To change some, or to print in another language, put a copy into a folder of your own, write the language's code and
# its words, and build with --templates FOLDER. What stands in braces is put in. What you leave out stays as it is here.
# The maps that are empty here are filled as in de/words.yaml.
`;

export function wordsPage(): string {
  return `${head}${stringify(englishList, { lineWidth: 0 })}`;
}
