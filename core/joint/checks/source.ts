import type { Failure } from '../../failure/failure.ts';
import type { JointContent } from '../joint.ts';
import { refusal } from './refusal.ts';

export const numbersHaveSource = ({ numbersSource: { text } }: JointContent): readonly Failure[] =>
  text.trim() === ''
    ? [
        refusal(
          'numbersSource.text',
          'nobody can tell where the numbers come from',
          'manual, page and edition; standard; trial',
        ),
      ]
    : [];
