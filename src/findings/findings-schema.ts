/**
 * What `check --json` prints, as JSON Schema (draft-07, which most validators read). Keys are added, never
 * renamed or taken away, so further keys are allowed: a program that reads version 1 goes on working.
 */
const count = { type: 'integer', minimum: 0 } as const;
const words = { type: 'string', minLength: 1 } as const;

export const findingsSchema = {
  $schema: 'http://json-schema.org/draft-07/schema#',
  title: 'Findings of readback check --json, version 1',
  description: 'One checked plan, or several under `plans`.',
  oneOf: [
    { $ref: '#/definitions/checkedPlan' },
    {
      type: 'object',
      required: ['plans'],
      properties: { plans: { type: 'array', items: { $ref: '#/definitions/checkedPlan' } } },
    },
  ],
  definitions: {
    checkedPlan: {
      type: 'object',
      required: ['plan', 'revision', 'check', 'findings', 'counts'],
      properties: {
        plan: { ...words, description: 'The file as it was named on the command line.' },
        revision: {
          type: ['integer', 'null'],
          minimum: 0,
          description: 'Null where the plan could not be read.',
        },
        check: {
          type: ['string', 'null'],
          pattern: '^[A-Z][0-9][A-Z][0-9]$',
          description: 'The plan check: letter, digit, letter, digit. Null where the plan could not be read.',
        },
        findings: {
          type: 'array',
          description: 'Most serious first, then in the order of the file.',
          items: { $ref: '#/definitions/finding' },
        },
        counts: {
          type: 'object',
          required: ['error', 'warning', 'note'],
          properties: { error: count, warning: count, note: count },
          description: 'Of all findings; with --quiet more than are listed.',
        },
        accepted: {
          type: 'array',
          description: 'What the group has looked at and keeps; counted nowhere.',
          items: {
            allOf: [
              { $ref: '#/definitions/finding' },
              {
                type: 'object',
                required: ['because', 'until'],
                properties: {
                  because: { ...words, description: 'The reason of the group.' },
                  until: { type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}$', description: 'The last day.' },
                },
              },
            ],
          },
        },
        unread: {
          ...words,
          description: 'Only where the file could not be read at all: why. The exit status is then 2.',
        },
      },
    },
    finding: {
      type: 'object',
      required: ['rule', 'severity', 'basis', 'message', 'file', 'line', 'column', 'path', 'source'],
      properties: {
        rule: {
          type: 'string',
          pattern: '^[a-z0-9-]+/[a-z0-9-]+$',
          description: 'Stable for ever; `readback explain RULE` says more.',
        },
        severity: { enum: ['error', 'warning', 'note'] },
        basis: { enum: ['law', 'band plan', 'practice', 'consistency'] },
        message: { ...words, description: 'One plain sentence, with the figures in it.' },
        file: { ...words, description: 'The plan, or a rules file it names.' },
        line: { type: 'integer', minimum: 1 },
        column: { type: 'integer', minimum: 1, description: 'In UTF-16 units.' },
        path: {
          type: 'string',
          description:
            'Keys and list positions joined by points, `repeaters.gap.offset`; empty for the whole file.',
        },
        source: {
          description: 'The published document that the finding rests on; null where there is none.',
          oneOf: [
            { type: 'null' },
            {
              type: 'object',
              required: ['document'],
              properties: {
                document: words,
                section: words,
                date: {
                  type: 'string',
                  pattern: '^\\d{4}-\\d{2}-\\d{2}$',
                  description: 'Of the text that was read.',
                },
                fromMemory: {
                  type: 'boolean',
                  description: 'True where the figure was not found in a text that was read.',
                },
              },
            },
          ],
        },
        suggestion: { ...words, description: 'What to write instead, where it can be known.' },
      },
    },
  },
} as const;
