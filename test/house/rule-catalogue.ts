/** The page of all rules, made from the fields that `explain` shows. */
import { allRules } from '../../src/checks/all-rules.ts';
import type { Rule } from '../../src/checks/rule.ts';
import { type DescribedRule, describedRules } from '../../src/cli/described-rules.ts';
import type { Source } from '../../src/findings/finding.ts';

export function ruleCatalogue(): string {
  const topics = new Map<string, DescribedRule[]>();
  for (const rule of describedRules)
    topics.set(topicOf(rule.id), [...(topics.get(topicOf(rule.id)) ?? []), rule]);
  const contents = [...topics].map(
    ([topic, rules]) =>
      `- **${topic}**: ${rules.map(({ id }) => `[${id.split('/')[1]}](#${anchor(id)})`).join(', ')}`,
  );
  return `# What is looked for in a plan

<!-- Generated from the rules themselves by \`npm run generate\`; change the rule's file, not this page. -->

${describedRules.length} rules; an id is kept for ever. ${allRules.length} of them are one file here, named by the id; the others speak of
how a plan is written or printed, come from reading the file and from laying out documents, and have no file of
their own. An *error* is unlawful, impossible or contradicts itself; a *warning* goes against a published band
plan or is probably a mistake; a *note* is good practice. \`accepted\` in a plan keeps a finding on the list with
the group's reason and an end; an error that rests on law cannot be accepted away. \`readback explain RULE\`
shows the same as below.

${contents.join('\n')}

${[...topics].map(([topic, rules]) => `## ${topic}\n\n${rules.map(entry).join('\n')}`).join('\n')}`;
}

function entry(described: DescribedRule): string {
  const rule = allRules.find(({ id }) => id === described.id);
  return `### ${described.id}

*${described.severity}, basis: ${rule?.basis ?? 'consistency'}.* ${described.looksFor}

${described.why}

**How to mend it.** ${described.mend}
${rule ? sourceAndExamples(rule) : ''}`;
}

function sourceAndExamples(rule: Rule): string {
  return `
Source: ${rule.sources.map(sourceText).join('; ')}.

Found on the marked line${rule.bad.split('# finding').length > 2 ? 's' : ''}:

\`\`\`yaml
${rule.bad.trim()}
\`\`\`

Not found:

\`\`\`yaml
${rule.good.trim()}
\`\`\`
`;
}

function sourceText({ document, section, date, fromMemory }: Source): string {
  const parts = [document, section, date === undefined ? undefined : `as of ${date}`].filter(
    (part) => part !== undefined,
  );
  return `${parts.join(', ')}${fromMemory ? ' (from memory: check before relying on it)' : ''}`;
}

function topicOf(id: string): string {
  return id.split('/')[0] ?? id;
}

/** As GitHub and most others make anchors of headings. */
function anchor(heading: string): string {
  return heading.toLowerCase().replaceAll(/[^a-z0-9-]/g, '');
}
