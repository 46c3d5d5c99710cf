/** Reads the parts of one element and refuses, by name and line, what the markup does not have there. */
import type { Align, TextSize } from './content.ts';
import { type Element, refuseMarkup } from './parse-markup.ts';

export const aligns: readonly Align[] = ['start', 'center', 'end'];
export const sizes: readonly TextSize[] = ['normal', 'small', 'large', 'huge'];

export function elementsOf(element: Element, names: readonly string[]): Element[] {
  const found: Element[] = [];
  for (const child of element.children) {
    if (typeof child !== 'string') {
      if (!names.includes(child.name)) throw unknown(child, element.name, names);
      found.push(child);
    } else if (child.trim() !== '')
      throw refuseMarkup(
        element.at,
        `The text "${child.trim().slice(0, 30)}" stands in <${element.name}>, which holds only ${names.map((name) => `<${name}>`).join(', ')}.`,
      );
  }
  return found;
}

export function unknown(child: Element, parent: string, names: readonly string[]): Error {
  return refuseMarkup(
    child.at,
    `<${child.name}> has no place in <${parent}>, which holds ${names.map((name) => `<${name}>`).join(', ')}.`,
  );
}

export function one(element: Element, name: string): Element | undefined {
  const found = element.children.filter(
    (child): child is Element => typeof child !== 'string' && child.name === name,
  );
  const second = found[1];
  if (second !== undefined) throw refuseMarkup(second.at, `<${element.name}> has a second <${name}>.`);
  return found[0];
}

export function allow(element: Element, names: readonly string[]): void {
  for (const key of element.attributes.keys())
    if (!names.includes(key))
      throw refuseMarkup(
        element.at,
        `<${element.name}> has no attribute ${key}${names.length === 0 ? '' : `; it has ${names.join(', ')}`}.`,
      );
}

export function empty(element: Element): void {
  if (element.children.some((child) => typeof child !== 'string' || child.trim() !== ''))
    throw refuseMarkup(element.at, `<${element.name}/> holds nothing.`);
}

export function required(element: Element, key: string): string {
  const value = element.attributes.get(key);
  if (value === undefined || value.trim() === '')
    throw refuseMarkup(element.at, `<${element.name}> needs the attribute ${key}.`);
  return value;
}

export function choice<T extends string>(
  element: Element,
  key: string,
  values: readonly T[],
  otherwise?: T,
): T {
  const value = element.attributes.get(key) ?? otherwise;
  const found = values.find((candidate) => candidate === value);
  if (found === undefined)
    throw refuseMarkup(
      element.at,
      `${key} of <${element.name}> is "${value ?? ''}"; it can be ${values.join(', ')}.`,
    );
  return found;
}

export function yes(element: Element, key: string): boolean {
  return choice(element, key, ['no', 'yes'] as const, 'no') === 'yes';
}

export function number(element: Element, key: string, otherwise?: number): number {
  const value = element.attributes.get(key);
  if (value === undefined && otherwise !== undefined) return otherwise;
  if (value === undefined || !/^\d+(\.\d+)?$/.test(value))
    throw refuseMarkup(element.at, `${key} of <${element.name}> is "${value ?? ''}"; a number is meant.`);
  return Number(value);
}

export function positive(element: Element, key: string, otherwise?: number): number {
  const value = number(element, key, otherwise);
  if (value <= 0) throw refuseMarkup(element.at, `${key} of <${element.name}> must be above 0.`);
  return value;
}

export function whole(element: Element, key: string): number {
  const value = number(element, key, 1);
  if (!Number.isInteger(value) || value < 1)
    throw refuseMarkup(element.at, `${key} of <${element.name}> is a whole number from 1.`);
  return value;
}

/** The language of words that are not in that of the document; an empty one is none. */
export function languageOf(element: Element): { language?: string } {
  const language = element.attributes.get('language') ?? '';
  return language === '' ? {} : { language };
}

export function identity(element: Element): { id?: string } {
  return element.attributes.has('id') ? { id: required(element, 'id') } : {};
}
