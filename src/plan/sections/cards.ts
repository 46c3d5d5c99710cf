/** How cards are printed. */
import * as z from 'zod';
import { keyed, oneOf, trueOrFalse } from '../written.ts';
import { notes } from './entry-values.ts';

export const millimetres = z
  .number({ error: 'millimetres' })
  .min(-10, { error: 'at most 10 mm' })
  .max(10, { error: 'at most 10 mm' });

export const cards = keyed(
  {
    size: oneOf(['id-1', 'index', 'a7', 'a6', 'fold']).default('id-1').describe('Size of the finished card.'),
    sheet: oneOf(['letter', 'a4']).default('letter').describe('The paper.'),
    flip: oneOf(['long-edge', 'short-edge'])
      .default('long-edge')
      .describe('The edge about which the printer turns the sheet.'),
    notes: notes.describe('Lines for every card.'),
    qr: trueOrFalse
      .describe('A code on the back that a telephone can read: the channels and the plan check.')
      .optional(),
    'back-shift': z
      .tuple([millimetres, millimetres], { error: 'two numbers in mm: right, down' })
      .default([0, 0])
      .describe('How far this printer sets the back off the front, in mm right and down.'),
  },
  'cards: size, sheet, flip, notes',
);
