/** All files below a folder of the project, as paths from its root with `/`, sorted. */
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const projectRoot = fileURLToPath(new URL('../..', import.meta.url));

export function filesBelow(folder: string): readonly string[] {
  return readdirSync(`${projectRoot}/${folder}`, { withFileTypes: true })
    .flatMap((entry) =>
      entry.isDirectory() ? filesBelow(`${folder}/${entry.name}`) : [`${folder}/${entry.name}`],
    )
    .sort();
}
