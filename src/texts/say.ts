/** Finds a text in the language in use and puts its values in. */

import { type Formatters, IntlMessageFormat } from 'intl-messageformat';
import type { Area, Translated } from './area.ts';
import type { Language } from './language.ts';
import type { NamesIn, Value } from './template.ts';

type Locales = string | string[] | undefined;

type Keys<A extends Area> = {
  readonly [K in keyof A['texts']]: A['texts'][K] extends string ? K : never;
}[keyof A['texts']] &
  string;

type Values<Text> = [NamesIn<Text>] extends [never]
  ? []
  : [values: Readonly<Record<NamesIn<Text>, Value>>];

/** `say('step', { index: 2, of: 9 })`. */
export type Say<A extends Area> = <K extends Keys<A>>(
  key: K,
  ...values: Values<A['texts'][K]>
) => string;

/** The texts of one area in a language. */
export function sayIn<A extends Area>(language: Language, area: A): Say<A> {
  const table: Readonly<Record<string, unknown>> = language.tables[area.area] ?? area.texts;
  return (key, ...[values]) => filled(String(table[key] ?? area.texts[key]), language, values);
}

/** A whole table, for phrases that may be said. */
export function tableIn<A extends Area>(language: Language, area: A): Translated<A> {
  return (language.tables[area.area] ?? area.texts) as Translated<A>;
}

/** A template with its values put in. */
export function filled(
  text: string,
  { locale }: Pick<Language, 'locale'>,
  values: Readonly<Record<string, Value>> | undefined,
): string {
  return text.includes('{') ? String(messageOf(text, locale).format(values)) : text;
}

/** Forms of numbers are dear to make: all templates share them. */
const formatters: Formatters = {
  getNumberFormat: onceEach((locale, how) => new Intl.NumberFormat(locale, how)),
  getDateTimeFormat: onceEach((locale, how) => new Intl.DateTimeFormat(locale, how)),
  getPluralRules: onceEach((locale, how) => new Intl.PluralRules(locale, how)),
};

function onceEach<How, Made>(
  make: (locale: Locales, how?: How) => Made,
): (locale: Locales, how?: How) => Made {
  const made = new Map<string, Made>();
  return (locale, how) => {
    const key = JSON.stringify([locale, how]);
    const form = made.get(key) ?? make(locale, how);
    made.set(key, form);
    return form;
  };
}

/** Each template is read once. */
const read = new Map<string, IntlMessageFormat>();

function messageOf(text: string, locale: string): IntlMessageFormat {
  const key = `${locale} ${text}`;
  const known = read.get(key);
  if (known) return known;
  const made = new IntlMessageFormat(text, locale, undefined, { ignoreTag: true, formatters });
  read.set(key, made);
  return made;
}
