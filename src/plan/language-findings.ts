/**
 * What can be wrong with the writing of a plan, before any rule looks at its sense, and with printing it, after
 * all have. These are findings like any other, with ids that are kept for ever, but they come from loading and
 * from layout and not from a rule's file.
 */
export interface LanguageFinding {
  readonly id: string;
  readonly looksFor: string;
  readonly why: string;
  readonly mend: string;
}

export const languageFindings = [
  {
    id: 'plan/not-yaml',
    looksFor: 'Text that YAML cannot read: a tab, a bracket left open, uneven indentation.',
    why: 'Where the structure of the file is unsure, every value in it is unsure.',
    mend: 'Indent with two spaces a level and put quotes around text that holds a colon, `#`, `*` or `!`.',
  },
  {
    id: 'plan/several-documents',
    looksFor: 'A second YAML document in one file, begun by a line of three hyphens.',
    why: 'A reader would see two plans where the program sees one.',
    mend: 'Keep one plan in one file.',
  },
  {
    id: 'plan/too-deep',
    looksFor: 'Brackets or lists nested deeper than any plan needs.',
    why: 'Such a file is damaged, or made to exhaust the program that reads it.',
    mend: 'Look for brackets that were never closed.',
  },
  {
    id: 'plan/too-many-aliases',
    looksFor: 'YAML aliases that expand to an enormous plan.',
    why: 'A short file can so be made to fill the memory of the machine.',
    mend: 'Write entries out, or use fewer aliases.',
  },
  {
    id: 'plan/duplicate-key',
    looksFor: 'One key written twice in the same mapping.',
    why: 'Only one of the two can hold, and a reader cannot tell which: two channels in slot 3, say.',
    mend: 'Rename one, or remove it.',
  },
  {
    id: 'plan/unknown-key',
    looksFor: 'A key that the plan language does not have at this place.',
    why: 'A mistyped key would be ignored in silence, and with it what it says.',
    mend: 'Correct the spelling; `readback schema` gives editors the list of keys.',
  },
  {
    id: 'plan/bad-key',
    looksFor: 'An id or slot number that is not written as one.',
    why: 'Everything in a plan is referred to by these, on paper as well, so they are kept short and plain.',
    mend: 'Ids are small letters, digits and hyphens, beginning with a letter; slots are whole numbers without leading zeros.',
  },
  {
    id: 'plan/cut-text',
    looksFor: 'Text that YAML cuts off at a number sign: `title: Net #1` holds only `Net`.',
    why: 'A number sign after a space begins a comment, so what follows it is gone from every card without a word.',
    mend: 'Put the text in quotes; for a comment, leave a space after the number sign.',
  },
  {
    id: 'plan/missing-entry',
    looksFor: 'A key that must be there and is not.',
    why: 'Nothing is guessed: a repeater without an offset has no frequency to transmit on.',
    mend: 'Add the entry; the message says what it holds.',
  },
  {
    id: 'plan/wrong-value',
    looksFor: 'A value of the wrong kind, in the wrong unit, or not to be read.',
    why: 'A figure in the wrong unit is worse than none, and YAML reads some spellings as another number.',
    mend: 'Write the value as the message shows.',
  },
  {
    id: 'plan/unknown-rules',
    looksFor: 'A country or a rules file that there is nothing for.',
    why: 'Without the rules of the country nothing can be said about frequencies, licences or power.',
    mend: 'Name a country there are rules for, or a rules file beside the plan.',
  },
  {
    id: 'plan/unsound-rules',
    looksFor: 'A rules file whose tables contradict themselves or name what is not there.',
    why: 'A plan held against rules that are wrong is neither sound nor wrong.',
    mend: 'List every source, service and class that a row names, and let no two rows claim one frequency.',
  },
  {
    id: 'print/does-not-fit',
    looksFor: 'Words that do not fit on a card or a page at the least size that can be read there.',
    why: "Smaller type than 8 points is not read at arm's length by headlamp, and words that are cut are not read at all.",
    mend: 'Shorten what the message names, drop it, or choose the card size that would do.',
  },
  {
    id: 'print/no-letter-for',
    looksFor: 'A character that none of the typefaces holds.',
    why: 'It would be printed as an empty box.',
    mend: 'Write it with another character.',
  },
] as const satisfies readonly LanguageFinding[];
