import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { HtmlValidate } from 'html-validate';
import { Parser } from 'htmlparser2';
import { expect, it } from 'vitest';
import { html } from '../../../src/documents/formats/html.ts';
import { readContent } from '../../../src/documents/print/read-content.ts';

const manual = readFileSync(new URL('../../../src/documents/print/README.md', import.meta.url), 'utf8');
const day = {
  widthMm: 60,
  heightMm: 20,
  alt: 'A "day" & its hours',
  shapes: [
    {
      kind: 'line',
      points: [
        [0, 10],
        [60, 10],
      ],
      widthMm: 0.3,
      dashMm: [1, 1],
      grey: 0.4,
    },
    { kind: 'circle', x: 10, y: 10, radiusMm: 2, fill: 0 },
    {
      kind: 'polygon',
      points: [
        [20, 5],
        [30, 5],
        [30, 15],
      ],
      strokeMm: 0.2,
    },
    { kind: 'words', x: 40, y: 8, text: '<08:00>', sizePt: 9, align: 'center' },
  ],
} as const;
const pages = [...manual.matchAll(/```xml\n([\s\S]*?)```/g)].map((match) =>
  html(readContent(match[1] ?? '', new Map([['day', day]]))),
);

it('every element of the markup makes valid HTML', async () => {
  const validator = new HtmlValidate({
    extends: ['html-validate:standard', 'html-validate:a11y'],
    rules: { 'void-style': ['error', { style: 'omit' }] },
  });
  for (const page of pages) {
    const report = await validator.validateString(page);
    expect(
      report.results.flatMap((result) =>
        result.messages.map((message) => `${message.line}: ${message.ruleId}: ${message.message}`),
      ),
    ).toEqual([]);
  }
});

it('the page runs nothing and fetches nothing', () => {
  for (const page of pages) {
    const sheet = /<style>([\s\S]*)<\/style>/.exec(page)?.[1] ?? '';
    const hash = createHash('sha256').update(sheet).digest('base64');
    expect(page).toContain(
      `content="default-src 'none'; style-src 'sha256-${hash}'; base-uri 'none'; form-action 'none'"`,
    );
    expect(page).not.toMatch(/\sstyle=/);
    expect(page).not.toMatch(/<script|<link|<img|<iframe|javascript:|https?:|url\(|@import|\son\w+=/i);
  }
});

it('what a member wrote shows as it was written', () => {
  const written = html(
    readContent(
      '<document title="A &lt;b&gt; &amp; &quot;c&quot;" language="en" paper="A4"><p>&lt;script&gt;alert(1)&lt;/script&gt; &amp;amp;</p></document>',
    ),
  );
  const words: string[] = [];
  const names: string[] = [];
  const parser = new Parser({
    ontext: (text) => words.push(text),
    onopentagname: (name) => names.push(name),
  });
  parser.end(written);
  expect(words.join('')).toContain('<script>alert(1)</script> &amp;');
  expect(words.join('')).toContain('A <b> & "c"');
  expect(names).not.toContain('script');
});

it('a page reference on paper is a link by name on the screen, and it leads somewhere', () => {
  const [page] = pages;
  expect(page).toContain('<a href="#channels">Channels</a>');
  expect(page).toContain('<section id="channels" class="new-page">');
});

it('a figure and a mark say in words what they show', () => {
  const [page] = pages;
  expect(page).toContain('aria-label="A &quot;day&quot; &amp; its hours"');
  expect(page).toContain('aria-label="listen only"');
});

it('printed from a browser, each page bears the running head, whatever letters it has', () => {
  const page = html(
    readContent(
      '<document title="T" language="en" paper="A4"><running-head>The &quot;Gap&quot; \\ &lt;/style&gt;, plan check <b>A2C3</b></running-head><p>x</p></document>',
    ),
  );
  // CSS Syntax Level 3, 4.3.7: a backslash, the number in hexadecimal and a space.
  expect(page).toContain('@top-left{content:"The \\22 Gap\\22  \\5c  \\3c /style\\3e , plan check A2C3"');
});
