/** `readback explain`: one rule in full, or a line for each. */
import { createColors } from 'picocolors';
import { allRules } from '../checks/all-rules.ts';
import type { Rule } from '../checks/rule.ts';
import { plainWidth } from '../findings/display-width.ts';
import { nearest } from '../findings/nearest.ts';
import { sourceLine } from '../findings/print-findings.ts';
import { Refusal } from '../findings/refusal.ts';
import { wrapText } from '../findings/wrap-text.ts';
import { type DescribedRule, describedRules } from './described-rules.ts';
import type { ExitStatus } from './end-with.ts';
import { columnsOf, hasColour } from './terminal.ts';

export interface ExplainOptions {
  readonly json?: true;
  readonly color?: boolean;
}

export async function explain(id: string | undefined, options: ExplainOptions): Promise<ExitStatus> {
  const colours = createColors(hasColour(process.stdout, options));
  const width = columnsOf(process.stdout);
  if (id === undefined) {
    process.stdout.write(
      options.json ? asJson(describedRules.map(complete)) : list(describedRules, width, colours),
    );
    return 0;
  }
  const described = describedRules.find((rule) => rule.id === id);
  const topic = described ? undefined : byTopic().get(id.replace(/\/$/, ''));
  if (topic) {
    process.stdout.write(options.json ? asJson(topic.map(complete)) : list(topic, width, colours));
    return 0;
  }
  if (!described) {
    const near = nearest(
      id,
      describedRules.map((rule) => rule.id),
    );
    throw new Refusal(
      `There is no rule ${id}.`,
      near ? `Did you mean ${near}?` : '`readback explain` lists them all.',
    );
  }
  process.stdout.write(options.json ? asJson(complete(described)) : full(described, width, colours));
  return 0;
}

type Colours = ReturnType<typeof createColors>;

function list(rules: readonly DescribedRule[], width: number, { bold, dim }: Colours): string {
  const indent = ' '.repeat(6);
  const blocks = [...byTopic(rules).values()].map((ofTopic) =>
    ofTopic
      .map(({ id, severity, looksFor }) => {
        const lines = wrapText(looksFor, width - indent.length, plainWidth).map((line) => indent + line);
        return [`${bold(id)}  ${dim(severity)}`, ...lines].join('\n');
      })
      .join('\n'),
  );
  return `${blocks.join('\n\n')}\n\n${rules.length} rules. \`readback explain RULE\` tells why, from what source, and how to mend it.\n`;
}

function byTopic(rules: readonly DescribedRule[] = describedRules): Map<string, DescribedRule[]> {
  const topics = new Map<string, DescribedRule[]>();
  for (const rule of rules) {
    const topic = rule.id.split('/')[0] ?? '';
    topics.set(topic, [...(topics.get(topic) ?? []), rule]);
  }
  return topics;
}

function full(described: DescribedRule, width: number, { bold, dim }: Colours): string {
  const rule = allRules.find((candidate) => candidate.id === described.id);
  const paragraph = (title: string, text: string) =>
    `${bold(title)}\n${wrapText(text, width - 2, plainWidth)
      .map((line) => `  ${line}`)
      .join('\n')}\n`;
  const parts = [
    `${bold(described.id)}  ${dim(`${described.severity}, basis: ${rule?.basis ?? 'consistency'}`)}\n`,
    paragraph('What it looks for', described.looksFor),
    paragraph('Why', described.why),
    paragraph('How to mend it', described.mend),
  ];
  if (rule) {
    const indent = (text: string) =>
      text
        .trim()
        .split('\n')
        .map((line) => `  ${line}`)
        .join('\n');
    parts.push(
      paragraph('Source', rule.sources.map(sourceLine).join('; ')),
      `${bold('Wrong')}\n${indent(rule.bad)}\n`,
      `${bold('Right')}\n${indent(rule.good)}\n`,
    );
  }
  return parts.join('\n');
}

function complete(described: DescribedRule): object {
  const rule: Rule | undefined = allRules.find((candidate) => candidate.id === described.id);
  const { id, severity, looksFor, why, mend } = described;
  return {
    id,
    severity,
    basis: rule?.basis ?? 'consistency',
    looksFor,
    why,
    mend,
    ...(rule && { sources: rule.sources, wrong: rule.bad.trim(), right: rule.good.trim() }),
  };
}

function asJson(value: object): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
