import { Refusal } from './refusal.ts';

/** What a command line may hold. */
interface Expected {
  /** What its one file is, such as a design. */
  readonly file: string;
  /** Options that take a value, and what that value is, such as a folder. */
  readonly values: Readonly<Record<string, string>>;
  readonly flags: readonly string[];
  readonly usage: string;
}

interface Arguments {
  readonly file: string | undefined;
  readonly values: ReadonlyMap<string, string>;
  readonly flags: ReadonlySet<string>;
}

/** Sorts the words of a command line. Throws a Refusal that says which word is wrong, and how the command is used. */
export function splitArguments(args: readonly string[], expected: Expected): Arguments {
  const refuse = (problem: string) => new Refusal(`${problem} Use: ${expected.usage}`);
  const values = new Map<string, string>();
  const flags = new Set<string>();
  let file: string | undefined;
  for (let i = 0; i < args.length; i++) {
    const arg = args[i]!;
    if (Object.hasOwn(expected.values, arg)) {
      const value = args[++i];
      if (value === undefined || value.startsWith('--')) throw refuse(`${arg} needs ${expected.values[arg]}.`);
      values.set(arg, value);
    } else if (expected.flags.includes(arg)) flags.add(arg);
    else if (arg.startsWith('-')) throw refuse(`Nobody here knows ${arg}.`);
    else if (file === undefined) file = arg;
    else throw refuse(`One ${expected.file} at a time: ${file} or ${arg}?`);
  }
  return { file, values, flags };
}
