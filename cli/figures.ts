import { InvalidArgumentError } from 'commander';

type Reading = (text: string) => number;

const FITS = { 'from 0': (value: number) => value >= 0, 'above 0': (value: number) => value > 0 } as const;

/** Reads the figure of an option, plain decimals with a point; what is none is refused with what is wanted. */
export function figure(wanted: string, range: keyof typeof FITS): Reading {
  return (text) => {
    const value = Number(text);
    if (/^\d+(\.\d+)?$/.test(text) && FITS[range](value)) return value;
    throw new InvalidArgumentError(`Wanted is ${wanted}, such as 12.5.`);
  };
}

/** Reads the whole number of an option. */
export function wholeNumber(lowest: number, highest: number): Reading {
  return (text) => {
    const value = Number(text);
    if (/^\d+$/.test(text) && value >= lowest && value <= highest) return value;
    throw new InvalidArgumentError(`Wanted is a whole number from ${lowest} to ${highest}.`);
  };
}
