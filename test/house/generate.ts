/** Writes the pages that are made from the code: `npm run generate`. */
import { writeFileSync } from 'node:fs';
import { projectRoot } from './files-below.ts';
import { generatedPages } from './generated-pages.ts';

export function generate(): void {
  for (const [path, text] of generatedPages()) writeFileSync(`${projectRoot}/${path}`, text);
}

generate();
