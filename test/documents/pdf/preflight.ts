/**
 * Apache PDFBox Preflight 2.0.27, a validator of PDF/A-1b (ISO 19005-1), from Debian's packages. There is none of
 * PDF/A-2 there; what the first part asks and the second does not is left out by name.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const jars = [
  'preflight',
  'pdfbox2',
  'xmpbox',
  'fontbox2',
  'commons-logging',
  'javax.activation',
  'jaxb-api',
].map((name) => `/usr/share/java/${name}.jar`);

export const canPreflight = jars.every((jar) => existsSync(jar));
if (!canPreflight && process.env['CI'] !== undefined)
  throw new Error(
    'PDFBox Preflight is missing: apt-get install libpdfbox2-java libactivation-java libjaxb-api-java',
  );

/**
 * The part is another; a font need not list its characters (ISO 19005-2, 6.2.11.4.2, from memory); and objects may
 * lie in streams, with a table of them in a stream as well, which PDF 1.4 had not (6.1.4, from memory).
 */
const onlyInTheFirstPart =
  /part must be 1$|The CIDSet entry is missing for the Composite Subset$|cross reference streams are not allowed$/;

/** What the validator says of each file, by name, without what only PDF/A-1 asks. */
export function preflight(files: ReadonlyMap<string, Uint8Array>): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), 'readback-'));
  try {
    const names = [...files.keys()];
    const paths = names.map((_, at) => join(folder, `${at}.pdf`));
    for (const [at, bytes] of [...files.values()].entries()) writeFileSync(paths[at] ?? '', bytes);
    const list = join(folder, 'files.txt');
    writeFileSync(list, `${paths.join('\n')}\n`);
    const validator = 'org.apache.pdfbox.preflight.Validator_A1b';
    execFileSync('java', ['-cp', jars.join(':'), validator, 'xml', 'group', list], { stdio: 'pipe' });
    const report = readFileSync(`${list}.preflight.xml`, 'utf8');
    const looked = [...report.matchAll(/<preflight name="(\d+)\.pdf">(.*?)<\/preflight>/gs)];
    if (looked.length !== files.size)
      throw new Error(`${looked.length} of ${files.size} files were looked at`);
    return looked.flatMap(([, at, found = '']) =>
      [...found.matchAll(/<code>([^<]*)<\/code>\s*<details>([^<]*)<\/details>/g)]
        .filter(([, , details = '']) => !onlyInTheFirstPart.test(details))
        .map(([, code, details]) => `${names[Number(at)]}: ${code} ${details}`),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
