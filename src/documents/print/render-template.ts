/**
 * Renders a Handlebars template to markup. A template places words: it may loop and choose (`each`, `if`,
 * `unless`, `with`) and take in other templates, and nothing else. A field the data lack is an error, also
 * in a loop or a condition (say `null` or an empty list for "none"); values are always escaped; the data
 * are copied to plain objects without prototypes, so no template reaches further than its data.
 */
import { Refusal } from '../../findings/refusal.ts';
import { withoutControls } from './escape-markup.ts';
import { markPlaces } from './parse-markup.ts';

/** Template sources by file name, as in `card.hbs`. A template takes another in by its name without `.hbs`. */
export type Templates = ReadonlyMap<string, string>;

const knownHelpers = {
  each: true,
  if: true,
  unless: true,
  with: true,
  log: false,
  lookup: false,
  blockHelperMissing: false,
};

/** Places data into a template. @throws Refusal with the file and line of the template that is wrong */
export type Render = (file: string, data: unknown) => string;

/**
 * Templates compiled beforehand, by {@link preparedKey}; what of them is in use needs neither the parser nor the
 * compiler of Handlebars.
 */
export type PreparedTemplates = ReadonlyMap<string, unknown>;

/** A template is known again by its name and its text, so that one that was changed is compiled anew. */
export function preparedKey(name: string, source: string): string {
  return `${name}\n${source}`;
}

const strictly = { strict: true, knownHelpersOnly: true, knownHelpers };

/** A template as JavaScript, for {@link PreparedTemplates}. @throws Refusal as rendering it does */
export async function prepareTemplate(name: string, source: string): Promise<string> {
  const { default: Handlebars } = await import('handlebars');
  const made: unknown = Handlebars.precompile(parsed(Handlebars.parse, name, source), strictly);
  return String(made);
}

/** Each template is read and compiled once, when it is first asked for, unless it was prepared. */
export async function templateEngine(
  templates: Templates,
  prepared: PreparedTemplates = new Map(),
): Promise<Render> {
  const isPrepared = [...templates].every(([name, source]) => prepared.has(preparedKey(name, source)));
  // The runtime alone is a small part of the whole, and has no types of its own.
  const { default: Handlebars } = (await (isPrepared
    ? import('handlebars/runtime')
    : import('handlebars'))) as typeof import('handlebars') & { default: typeof import('handlebars') };
  const engine = Handlebars.create();
  for (const name of ['log', 'lookup']) engine.unregisterHelper(name);
  for (const name of ['each', 'if', 'unless', 'with']) {
    const helper: unknown = engine.helpers[name];
    if (typeof helper !== 'function') throw new Error(`Handlebars has no helper ${name}.`);
    engine.registerHelper(
      name,
      function (this: unknown, value: unknown, options: { loc?: { start: { line: number } } }) {
        if (value === undefined) throw new MissingField(name, options.loc?.start.line);
        return helper.call(this, value, options);
      },
    );
  }

  type Compiled = (context: unknown, options?: Handlebars.RuntimeOptions) => string;
  const compile = (name: string, source: string): Compiled => {
    const ready = prepared.get(preparedKey(name, source));
    const render =
      ready === undefined
        ? engine.compile(parsed(Handlebars.parse, name, source), strictly)
        : engine.template(ready as TemplateSpecification);
    return (context, options) => {
      try {
        return render(context, options);
      } catch (error) {
        throw templateRefusal(name, error);
      }
    };
  };
  const compiled = new Map<string, Compiled>();
  const named = (name: string): Compiled => {
    const source = templates.get(name);
    if (source === undefined) throw new Refusal(`There is no template ${name}.`);
    const render = compiled.get(name) ?? compile(name, source);
    compiled.set(name, render);
    return render;
  };

  for (const name of templates.keys()) {
    const partial: Compiled = (context, options) => named(name)(context, options);
    // A partial may be any function of context and options; the declared type asks for more than is used.
    engine.registerPartial(name.replace(/\.hbs$/, ''), partial as Handlebars.Template);
  }
  return (file, data) => named(file)(plainData(data, file, 0));
}

/** One document from one template. */
export async function renderTemplate(templates: Templates, file: string, data: unknown): Promise<string> {
  return (await templateEngine(templates))(file, data);
}

class MissingField extends Error {
  readonly lineNumber: number | undefined;
  constructor(helper: string, line: number | undefined) {
    super(`what {{#${helper}}} asks for is not in the data`);
    this.lineNumber = line;
  }
}

/** Marked with the places of its tags, and with nothing in it that templates may not have. */
function parsed(parse: typeof Handlebars.parse, file: string, source: string): hbs.AST.Program {
  let program: hbs.AST.Program;
  try {
    program = parse(markPlaces(file, source));
  } catch (error) {
    throw templateRefusal(file, error);
  }
  refuseRaw(file, program);
  return program;
}

/** `{{{x}}}` and `{{& x}}` would put a value in unescaped. */
function refuseRaw(file: string, program: hbs.AST.Program): void {
  const walk = (statements: readonly hbs.AST.Statement[]): void => {
    for (const statement of statements) {
      if (statement.type === 'MustacheStatement' && !(statement as hbs.AST.MustacheStatement).escaped)
        throw new Refusal(
          `${file}:${statement.loc.start.line}: {{{ }}} would print a value unescaped; write {{ }}.`,
        );
      if (
        statement.type === 'Decorator' ||
        statement.type === 'DecoratorBlock' ||
        statement.type === 'PartialBlockStatement'
      )
        throw new Refusal(
          `${file}:${statement.loc.start.line}: Only values, each, if, unless, with and {{> partials}} may be used.`,
        );
      if (statement.type !== 'BlockStatement') continue;
      const block = statement as hbs.AST.BlockStatement;
      if (block.program !== undefined) walk(block.program.body);
      if (block.inverse !== undefined) walk(block.inverse.body);
    }
  };
  walk(program.body);
}

function templateRefusal(file: string, error: unknown): Error {
  if (error instanceof Refusal) return error;
  if (error instanceof RangeError)
    return new Refusal(`${file}: The templates take each other in without end.`);
  if (!(error instanceof Error)) return new Error(String(error));
  const known = error as Error & { lineNumber?: number };
  const parsed = /on line (\d+)/.exec(error.message);
  const line = known.lineNumber ?? (parsed === null ? undefined : Number(parsed[1]));
  const sentence =
    error.message
      .replace(/ - \d+:\d+$/, '')
      .replace(
        /^Cannot use 'in' operator to search for '(.*?)' in [\s\S]*$/,
        '"$1" is asked of a text, which has no fields',
      )
      .replace(/ not defined in [\s\S]*$/, ' not defined')
      .split('\n')[0] ?? '';
  return new Refusal(`${file}${line === undefined ? '' : `:${line}`}: ${sentence.replace(/[:.]$/, '')}.`);
}

/** Handlebars puts the record into its message about a missing field, so a record must turn into words; by symbol, because a named member could be reached. */
const nameless: object = Object.defineProperty(Object.create(null), Symbol.toPrimitive, {
  value: () => 'the data',
});

/** Strings, numbers, booleans, null, lists and plain records of them. A field that is `undefined` counts as missing. */
function plainData(value: unknown, file: string, depth: number): unknown {
  if (depth > 64) throw new Error(`The data for ${file} are nested more than 64 deep.`);
  if (typeof value === 'string') return withoutControls(value);
  if (value === null || typeof value === 'number' || typeof value === 'boolean' || value === undefined)
    return value;
  if (Array.isArray(value)) return value.map((item) => plainData(item, file, depth + 1));
  const prototype: unknown = typeof value === 'object' ? Object.getPrototypeOf(value) : undefined;
  if (prototype !== Object.prototype && prototype !== null)
    throw new Error(`The data for ${file} hold something that is not plain.`);
  const copy: Record<string, unknown> = Object.create(nameless);
  for (const [key, item] of Object.entries(value as object))
    if (item !== undefined) copy[key] = plainData(item, file, depth + 1);
  return copy;
}
