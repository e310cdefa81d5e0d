import type { ReactNode } from 'react';

export interface Option<T extends string> {
  readonly value: T;
  readonly label: ReactNode;
  readonly title?: string | undefined;
}

/** One by one, or each value with its words where there is nothing else to say. */
export type Options<T extends string> = readonly Option<T>[] | Readonly<Record<T, ReactNode>>;

/** The options in the order in which they are given. */
export function listOptions<T extends string>(options: Options<T>): readonly Option<T>[] {
  if (isList(options)) return options;
  return (Object.keys(options) as T[]).map((value) => ({ value, label: options[value] }));
}

function isList<T extends string>(options: Options<T>): options is readonly Option<T>[] {
  return Array.isArray(options);
}
