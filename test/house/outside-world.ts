/** Where a file below `cli` reaches for the world outside: clock, chance, environment, locale, console. */
import { transformSync } from 'esbuild';

const reaches: readonly (readonly [RegExp, string])[] = [
  [/\bconsole\s*\./, 'the console'],
  [
    /\bDate\.now\b|\bnew Date\(\s*\)|(?<![.\w])Date\(\)|\bTemporal\.Now\b|\bperformance\s*\.\s*now\b/,
    'the clock',
  ],
  [/\b(?:setTimeout|setInterval|setImmediate)\s*\(/, 'the clock'],
  [/\bMath\.random\b|\brandomUUID\b|\brandomBytes\b|\bgetRandomValues\b/, 'chance'],
  [/(?<![.\w])process(?:\.[a-zA-Z]|\[)|\bglobalThis\b|\bimport\.meta\b/, 'the environment'],
  [
    /\.toLocale\w*\s*\(|\.localeCompare\s*\(|\bIntl\.(?!Segmenter\b|supportedValuesOf\b|DateTimeFormat\(['"]en-US['"])/,
    'the locale',
  ],
  [/(?<![.\w])fetch\s*\(|\bWebSocket\b|\bXMLHttpRequest\b/, 'the network'],
  [
    /\bcreateRequire\b|(?<![.\w])require\s*\(|(?<![.\w])eval\s*\(|\bimport\s*\(\s*[^\s'"`]|\bnew Function\b/,
    'code it does not name',
  ],
];

/** @param text TypeScript; comments in it are not looked at. */
export function outsideWorld(text: string): readonly string[] {
  // The compiler takes the comments out: a pattern of our own would stumble over quotes and regular expressions.
  const { code } = transformSync(text, { loader: 'ts', legalComments: 'none', format: 'esm' });
  return reaches.filter(([pattern]) => pattern.test(code)).map(([, what]) => what);
}
