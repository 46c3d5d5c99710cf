import { describe, expect, test } from 'vitest';
import { type Answers, entryConversation } from '../../src/audit/entry-conversation.ts';
import { entriesOf } from '../../src/consequences/entries.ts';
import { faultPlan } from './fault-plan.ts';
import { planFrom, radioOf } from './worksheet-rows.ts';

const tested = await planFrom(faultPlan);
const plain = radioOf(tested, 'plain');
const entries = entriesOf(tested.plan, tested.consequences, plain);

/** Types the lines one after another; the terminal closes after the last. */
function talk(lines: readonly string[], answered: Answers = new Map()) {
  const conversation = entryConversation(plain, entries, answered);
  const asked: string[] = [];
  const said: string[] = [];
  let turn = conversation.next();
  for (const line of [...lines, undefined]) {
    if (turn.done) break;
    asked.push(turn.value.prompt.trim());
    said.push(...turn.value.say);
    turn = conversation.next(line);
  }
  return { asked, said, answers: turn.done ? turn.value : undefined };
}

describe('reading a radio by question and answer', () => {
  test('asks in the order of the menu, slot by slot, and never says what the plan has', () => {
    const { asked, said } = talk(['146.94', '-', '0.6', '100', '147.225']);
    expect(asked.slice(0, 5)).toEqual(['receive:', 'offset direction:', 'offset:', 'tone:', 'receive:']);
    expect(said.join('\n')).not.toMatch(/146\.94|100\.0/);
  });

  test('an answer that cannot be read is asked for again', () => {
    const { asked, answers } = talk(['GAP', '146.94']);
    expect(asked.slice(0, 3)).toEqual(['receive:', 'receive:', 'offset direction:']);
    expect(answers?.get(1)?.get('receive')).toBe('146.94');
  });

  test('enter alone is not read, < goes back, ? helps, empty ends the slot, q keeps what was answered', () => {
    const { answers, asked, said } = talk(['', '<', '146.95', '?', '-', 'empty', '146.1', 'q', 'never']);
    expect(asked.slice(0, 7)).toEqual([
      'receive:',
      'offset direction:',
      'receive:',
      'offset direction:',
      'offset direction:',
      'offset:',
      'receive:',
    ]);
    expect(said.join('\n')).toContain('plus');
    expect([...(answers ?? [])].map(([slot, fields]) => [slot, Object.fromEntries(fields)])).toEqual([
      [1, { receive: 'empty' }],
      [2, { receive: '146.1' }],
    ]);
  });

  test('slots that were answered before are not asked again', () => {
    const { said } = talk([], new Map([[1, new Map([['receive', '146.94']])]]));
    expect(said.join('\n')).toContain('Slot 2 (1 of');
  });

  test('a terminal that closes loses nothing', () => {
    expect(talk(['146.94']).answers?.get(1)?.get('receive')).toBe('146.94');
  });
});
