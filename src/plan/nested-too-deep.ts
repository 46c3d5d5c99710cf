/**
 * Where a YAML text is nested too deep, found without recursion, so that a file of brackets is refused
 * before anything that recurses sees it: such a file exhausts the stack beyond what `try` can catch.
 */
import { CST, Lexer, Parser } from 'yaml';

/** Plans are four or five levels deep. */
export const deepest = 64;

/** What a text is made of, or where its brackets, or list marks on one line, are nested too deep. */
export type Tokens = { readonly tokens: readonly CST.Token[] } | { readonly tooDeepAt: number };

/** Reads the words of a text one by one, so that the parser never sees one that lies too deep. */
export function tokensOf(text: string): Tokens {
  const tokens: CST.Token[] = [];
  const parser = new Parser();
  let offset = 0;
  let brackets = 0;
  let marksOnLine = 0;
  let scalarNext = false;
  for (const word of new Lexer().lex(text)) {
    if (word === CST.SCALAR) scalarNext = true;
    else if (word !== CST.DOCUMENT && word !== CST.FLOW_END) {
      if (scalarNext) scalarNext = false;
      else if (word === '[' || word === '{') {
        brackets += 1;
        if (brackets > deepest) return { tooDeepAt: offset };
      } else if (word === ']' || word === '}') brackets = Math.max(0, brackets - 1);
      else if (word === '\n' || word === '\r\n') marksOnLine = 0;
      else if (brackets === 0 && (word === '-' || word === '?')) {
        marksOnLine += 1;
        if (marksOnLine > deepest) return { tooDeepAt: offset };
      }
      offset += word.length;
    }
    for (const token of parser.next(word)) tokens.push(token);
  }
  for (const token of parser.end()) tokens.push(token);
  return { tokens };
}

/** Offset of the first token nested too deep, by whatever means. */
export function tokenTooDeep(tokens: readonly CST.Token[]): number | undefined {
  const waiting: { token: CST.Token; depth: number }[] = tokens.map((token) => ({ token, depth: 0 }));
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { token, depth } = next;
    if (depth > deepest) return token.offset;
    if ('items' in token) {
      for (const item of token.items) {
        for (const inner of [item.key, item.value])
          if (inner) waiting.push({ token: inner, depth: depth + 1 });
      }
    } else if (token.type === 'document' && token.value) waiting.push({ token: token.value, depth });
  }
  return undefined;
}
