import { readFileSync } from 'node:fs';
import { type FontBytes, type FontName, fontFiles } from '../../../src/documents/print/fonts.ts';

const modules = new URL('../../../node_modules/', import.meta.url);

const read = (name: FontName) => () => readFileSync(new URL(fontFiles[name], modules));

export const fontBytes: FontBytes = {
  regular: read('regular'),
  bold: read('bold'),
  mono: read('mono'),
  'mono-bold': read('mono-bold'),
  fallback: read('fallback'),
  'fallback-bold': read('fallback-bold'),
};
