/** Whether a page can be used by everybody, as axe-core 4.14 judges it in a real browser (rules after WCAG 2.2, levels A and AA). */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import axe from 'axe-core';
import { expect, test } from 'vitest';
import { documentSet } from '../../../src/documents/document-set.ts';
import { germanPlan } from '../german-plan.ts';
import { demoPlan, press, subjectOf } from '../press.ts';

const browser = ['chromium', 'chromium-browser', 'google-chrome'].find(
  (name) => spawnSync(name, ['--version']).error === undefined,
);
if (browser === undefined) {
  const sentence = 'No headless Chromium, so no page was judged: apt-get install chromium';
  if (process.env['CI'] !== undefined) throw new Error(sentence);
  console.warn(sentence);
}

/** The page with axe in it; its own content policy would keep any script out, so the copy goes without. */
function violations(page: string): readonly string[] {
  const script = axe.source.replaceAll('</script', '<\\/script');
  const judged = page
    .replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, '')
    .replace(
      '</body>',
      () =>
        `<script>${script}</script><script>axe.run().then((r) => { document.documentElement.innerHTML = ''; document.title = 'JUDGED ' + JSON.stringify({ passes: r.passes.length, violations: r.violations.map((v) => v.id + ': ' + v.nodes.map((n) => n.target).join(' ')) }); }).catch((e) => { document.title = 'JUDGED ' + JSON.stringify({ passes: 0, violations: [String(e)] }); });</script></body>`,
    );
  const folder = mkdtempSync(join(tmpdir(), 'readback-'));
  try {
    writeFileSync(join(folder, 'page.html'), judged);
    const dom = execFileSync(
      browser ?? '',
      [
        '--headless',
        '--no-sandbox',
        '--disable-gpu',
        `--user-data-dir=${join(folder, 'profile')}`,
        '--virtual-time-budget=60000',
        '--dump-dom',
        `file://${join(folder, 'page.html')}`,
      ],
      { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 1e8 },
    );
    const said = /<title>JUDGED (.*?)<\/title>/s.exec(dom)?.[1];
    if (said === undefined) throw new Error(`The browser gave no judgement: ${dom.slice(0, 300)}`);
    const plain = said.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');
    const judgement = JSON.parse(plain) as { passes: number; violations: string[] };
    if (judgement.passes < 10) return [`only ${judgement.passes} rules applied`, ...judgement.violations];
    return judgement.violations;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

test.skipIf(browser === undefined)(
  'the booklet as a page has nothing that axe finds wrong, in both languages',
  { timeout: 120_000 },
  async () => {
    for (const [plan, language] of [
      [demoPlan, 'en'],
      [germanPlan, 'de'],
    ] as const) {
      const { files } = await documentSet(await subjectOf(plan, language === 'en'), press(language));
      expect(violations(new TextDecoder().decode(files.get('booklet.html')))).toEqual([]);
    }
  },
);

/** By how many pixels the page is wider than a telephone of 390, and whether the style sheet holds under its own policy. */
function onTelephone(page: string): { readonly over: number; readonly gridded: boolean } {
  const folder = mkdtempSync(join(tmpdir(), 'readback-'));
  try {
    writeFileSync(join(folder, 'page.html'), page);
    // A headless window is no narrower than 500 px; a frame is.
    writeFileSync(
      join(folder, 'phone.html'),
      `<!DOCTYPE html><title>x</title><iframe id="f" src="page.html" style="width:390px;height:800px;border:0"></iframe>
<script>onload = () => { const d = document.getElementById('f').contentDocument; document.title = 'MEASURED ' + (d.documentElement.scrollWidth - d.documentElement.clientWidth) + ' ' + d.defaultView.getComputedStyle(d.querySelector('table')).borderCollapse; };</script>`,
    );
    const dom = execFileSync(
      browser ?? '',
      [
        '--headless',
        '--no-sandbox',
        '--disable-gpu',
        '--allow-file-access-from-files',
        `--user-data-dir=${join(folder, 'profile')}`,
        '--virtual-time-budget=20000',
        '--dump-dom',
        `file://${join(folder, 'phone.html')}`,
      ],
      { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 1e8 },
    );
    const said = /<title>MEASURED (\d+) (\w+)<\/title>/.exec(dom);
    if (said === null) throw new Error(`The browser gave no measure: ${dom.slice(0, 300)}`);
    return { over: Number(said[1]), gridded: said[2] === 'collapse' };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

test.skipIf(browser === undefined)(
  'on a narrow screen wide tables move in their frames, and the page stays as wide as the screen',
  { timeout: 120_000 },
  async () => {
    const { files } = await documentSet(await subjectOf(demoPlan, true), press());
    const page = new TextDecoder().decode(files.get('booklet.html'));
    expect(onTelephone(page)).toEqual({ over: 0, gridded: true });
    expect(onTelephone(page.replaceAll('.scroll{overflow-x:auto}', '')).gridded).toBe(false);
  },
);

test.skipIf(browser === undefined)('axe does find a picture without words', { timeout: 120_000 }, () => {
  const page =
    '<!DOCTYPE html><html lang="en"><head><title>x</title></head><body><main><h1>x</h1><img src="data:,"></main></body></html>';
  expect(violations(page).join()).toContain('image-alt');
});
