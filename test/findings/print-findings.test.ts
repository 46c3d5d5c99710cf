import stringWidth from 'string-width';
import { expect, test } from 'vitest';
import type { Finding } from '../../src/findings/finding.ts';
import { plainPalette, printFindings, sourceLine } from '../../src/findings/print-findings.ts';
import { SourceText } from '../../src/findings/source-text.ts';

const text = new SourceText(
  'plans/x.yaml',
  'repeaters:\n  gap: { output: 146.940, offset: -0.5 }\n  far: { output: 147.240, offset: -0.5 }\n',
);

function about(needle: string, nth: number, finding: Partial<Finding> = {}): Finding {
  let at = -1;
  for (let count = 0; count < nth; count += 1) at = text.text.indexOf(needle, at + 1);
  return {
    rule: 'offset/unusual',
    severity: 'warning',
    basis: 'band plan',
    message: 'Offset is -0.5 MHz; the band plan gives -0.6 MHz at 146.940 MHz.',
    path: ['repeaters', 'gap', 'offset'],
    place: text.placeAt(at, at + needle.length),
    ...finding,
  };
}

function printed(findings: readonly Finding[], width = 80, palette = plainPalette): string {
  return printFindings(findings, {
    texts: new Map([[text.file, text]]),
    width,
    palette,
    widthOf: stringWidth,
  });
}

test('a finding is printed with its severity in words, its place, its line, and what to write instead', () => {
  const finding = about('-0.5', 1, {
    suggestion: '-0.6',
    source: { document: 'An invented band plan', section: '2 m', date: '2025-01-01', fromMemory: true },
  });
  expect(printed([finding])).toBe(`warning: Offset is -0.5 MHz; the band plan gives -0.6 MHz at 146.940 MHz.
  plans/x.yaml:2:35 repeaters.gap.offset (offset/unusual, band plan)
    2 |   gap: { output: 146.940, offset: -0.5 }
      |                                   ^^^^
  write instead: -0.6
  source: An invented band plan, 2 m, 2025-01-01, from memory: check it

No errors, 1 warning, no notes.
`);
});

test('the most serious comes first, and the last line counts them all', () => {
  const findings = [
    about('far', 1, { severity: 'note', rule: 'repeater/unused', message: 'Nobody uses it.' }),
    about('offset', 2, { severity: 'error', rule: 'offset/missing', message: 'No offset.' }),
    about('-0.5', 1),
    about('gap', 1, { severity: 'error', rule: 'name/none', message: 'No name.' }),
  ];
  const output = printed(findings);
  expect(output.match(/^(error|warning|note):.*$/gm)).toEqual([
    'error: No name.',
    'error: No offset.',
    expect.stringMatching(/^warning/),
    'note: Nobody uses it.',
  ]);
  expect(output.endsWith('\n\n2 errors, 1 warning, 1 note.\n')).toBe(true);
});

test('the same said of several places is one entry with several places', () => {
  const output = printed([about('-0.5', 2), about('-0.5', 1)]);
  expect(output.match(/^warning:/gm)).toHaveLength(1);
  expect(output).toContain('  also at: plans/x.yaml:3:35\n');
  expect(output).toContain('2 warnings');
});

test('nothing found is said in words', () => {
  expect(printed([])).toBe('No findings.\n');
});

test('text from a plan cannot reach the terminal as a command', () => {
  const evil = '\u001b]0;owned\u0007\r\n\u202e';
  const finding = about('gap', 1, {
    message: evil,
    suggestion: evil,
    path: [evil],
    source: { document: evil },
  });
  const output = printed([{ ...finding, place: { ...finding.place, file: evil } }]);
  expect(output.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\u202e]/u);
});

test('no line is wider than the terminal, as long as words fit', () => {
  const finding = about('-0.5', 1, {
    message: 'Offset is rather long to say '.repeat(8),
    suggestion: 'some other words '.repeat(10),
    source: { document: 'A long name of a document '.repeat(6) },
  });
  for (const width of [40, 60, 80, 100]) {
    for (const line of printed([finding], width).split('\n'))
      expect(stringWidth(line)).toBeLessThanOrEqual(width);
  }
});

test('colour only repeats what is said: without it the words are the same', () => {
  const code = (open: number) => (part: string) => `\u001b[${open}m${part}\u001b[0m`;
  const colours = { error: code(31), warning: code(33), note: code(36), strong: code(1), faint: code(2) };
  const findings = [about('-0.5', 1, { message: 'A message that runs over its line '.repeat(4) })];
  const coloured = printed(findings, 80, colours);
  expect(coloured).toContain('\u001b[33m');
  expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(printed(findings));
});

test('a finding in a text that is not at hand is printed without its line', () => {
  const output = printFindings([about('gap', 1)], {
    texts: new Map(),
    width: 80,
    palette: plainPalette,
    widthOf: stringWidth,
  });
  expect(output).not.toContain(' | ');
  expect(output).toContain('plans/x.yaml:2:3');
});

test('a source is one line', () => {
  expect(sourceLine({ document: '47 CFR', section: '97.205' })).toBe('47 CFR, 97.205');
});

test('errors alone are listed where that is wanted, and the closing line counts the rest', () => {
  const findings = [about('gap', 1, { severity: 'error', message: 'No name.' }), about('-0.5', 1)];
  const options = { texts: new Map(), width: 80, palette: plainPalette, widthOf: stringWidth, quiet: true };
  expect(printFindings(findings, options)).toBe(`error: No name.
  plans/x.yaml:2:3 repeaters.gap.offset (offset/unusual, band plan)

1 error, 1 warning, no notes; errors only are listed.
`);
  expect(printFindings([about('-0.5', 1)], options)).toBe(
    'No errors, 1 warning, no notes; errors only are listed.\n',
  );
  expect(printFindings([], options)).toBe('No findings.\n');
});

test('what is accepted is listed once for each acceptance: rule, places, reason and last day', () => {
  const kept = { because: 'Coordinated so', until: '2027-06-01', acceptedAt: text.placeAt(0) };
  const accepted = [
    { finding: about('-0.5', 1), ...kept },
    { finding: about('-0.5', 2, { path: ['repeaters', 'far', 'offset'] }), ...kept },
  ];
  const options = { texts: new Map(), width: 80, palette: plainPalette, widthOf: stringWidth, accepted };
  expect(printFindings([], options)).toBe(`Accepted, with the reason of the group:
  offset/unusual plans/x.yaml:2:35 repeaters.gap.offset, plans/x.yaml:3:35
    repeaters.far.offset
    Coordinated so; until 2027-06-01.

No findings.
`);
  expect(printFindings([], { ...options, quiet: true })).toBe('No findings.\n');
});
