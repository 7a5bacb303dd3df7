import {readFileSync} from 'node:fs';

/** One published value with where it stands. How to read a record: README.md in this folder. */
export interface PublishedValue {
  readonly id: string;
  readonly topic: string;
  readonly quantity: string;
  readonly formula: string;
  readonly inputs: Readonly<Record<string, {readonly value: number | string; readonly unit: string}>>;
  readonly expected: {readonly value: number | readonly number[] | string; readonly unit: string};
  /** Absolute, in the unit of `expected`, for each element of an array. */
  readonly tolerance: number | null;
  readonly source: {readonly title: string; readonly author: string | null; readonly where: string | null};
  readonly verified: string;
  readonly agrees: boolean | null;
  readonly note: string;
}

/** All records of one topic, `scales`, `lens`, `dof` …: the file of that name in `published/`. */
export function published(topic: string): readonly PublishedValue[] {
  return JSON.parse(readFileSync(new URL(`published/${topic}.json`, import.meta.url), 'utf8'));
}

/** The record with that id. Throws when there is none, so that a check cannot quietly lose its source. */
export function publishedValue(topic: string, id: string): PublishedValue {
  const found = published(topic).find((record) => record.id === id);
  if (!found) throw new Error(`no published value ${id} in ${topic}`);
  return found;
}

/** Number given as input `name` of a record. */
export function input(record: PublishedValue, name: string): number {
  const value = record.inputs[name]?.value;
  if (typeof value !== 'number') throw new Error(`${record.id} has no number ${name}`);
  return value;
}
