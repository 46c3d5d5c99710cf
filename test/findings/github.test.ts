import { expect, test } from 'vitest';
import { githubAnnotations } from '../../src/findings/github.ts';
import { unused, unusualOffset } from './machine-formats.ts';

// GitHub documentation, Workflow commands for GitHub Actions: `::error file={name},line={line},endLine={endLine},
// title={title}::{message}`; % CR LF are escaped everywhere, : and , in properties too (actions/toolkit, command.ts).
test('the most serious comes first, with its special characters escaped', () => {
  expect(githubAnnotations([unused, unusualOffset])).toBe(
    '::warning file=plans/my plan.yaml,line=12,endLine=12,col=7,title=offset/unusual::Offset is 100%25: of%0D%0Asomething, else.%0AWrite instead: -0.6\n' +
      '::notice file=plans/my plan.yaml,line=3,endLine=4,col=7,title=repeater/unused::Nobody uses it.\n',
  );
  expect(githubAnnotations([])).toBe('');
});

test('a message cannot begin a command of its own', () => {
  const evil = {
    ...unused,
    message: 'x\n::set-env name=A::b\u001b[2J',
    place: { ...unused.place, file: 'a,line=1::b\n.yaml' },
  };
  const output = githubAnnotations([evil]);
  expect(output.trimEnd().split('\n')).toHaveLength(1);
  expect(output).toContain('file=a%2Cline=1%3A%3Ab%0A.yaml,');
  expect(output).not.toContain('\u001b');
});
