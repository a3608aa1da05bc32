import {
  CALCULATIONS,
  calculate,
  calculateMany,
  inputJsonSchema,
  outputJsonSchema,
} from '@clampwright/core/calculations';
import type { Failure } from '@clampwright/core/failure';
import { readJsonText, standardInput } from '../input.ts';

/** `clampwright calc NAME`: JSON in, JSON out; a bad single input ends with exit code 2 and the error on standard error. */
export async function calc(
  name: string | undefined,
  options: { readonly input?: string; readonly schema?: boolean },
): Promise<void> {
  if (name === undefined) return list();
  const entry = CALCULATIONS.find((candidate) => candidate.name === name);
  if (!entry) {
    const names = CALCULATIONS.map((candidate) => candidate.name).join(', ');
    return refuse({
      kind: 'invalid',
      field: 'name',
      message: `there is no calculation ${name}`,
      expected: `one of ${names}`,
    });
  }
  if (options.schema) return answer({ input: inputJsonSchema(entry.name), output: outputJsonSchema(entry.name) });
  if (options.input === undefined && process.stdin.isTTY) return explain(entry);
  const input = readJsonText(options.input ?? standardInput());
  if (!input.ok) return refuse(input.failure);
  if (Array.isArray(input.value)) return answer(calculateMany(entry.name, input.value));
  const result = calculate(entry.name, input.value);
  return result.ok ? answer(result.value) : refuse(result.failure);
}

const answer = (value: unknown): void => {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
};

function refuse(failure: Failure): void {
  process.stderr.write(`${JSON.stringify({ error: failure }, null, 2)}\n`);
  process.exitCode = 2;
}

function list(): void {
  const width = Math.max(...CALCULATIONS.map(({ name }) => name.length));
  for (const { name, title } of CALCULATIONS) process.stdout.write(`${name.padEnd(width)}  ${title}\n`);
}

function explain({ name, title, cautions, sources, example }: (typeof CALCULATIONS)[number]): void {
  const lines = [
    title,
    '',
    ...cautions.map((caution) => `Caution: ${caution}`),
    ...sources.map((source) => `Source: ${source}`),
    '',
    `echo '${JSON.stringify(example)}' | clampwright calc ${name}`,
  ];
  process.stdout.write(`${lines.join('\n')}\n`);
}
