import { spawnSync } from 'node:child_process';

/** The system's own, which has Debian's packages, before one of the user's. */
const PYTHONS = ['/usr/bin/python3', 'python3'];

/** One thread, as ours. */
const ONE_THREAD = { OPENBLAS_NUM_THREADS: '1', OMP_NUM_THREADS: '1' };

/** What a peer's program prints, as JSON; undefined where no Python here has what it wants. */
export function pythonSays(program: string, input = ''): unknown {
  for (const python of PYTHONS) {
    const env = { ...process.env, ...ONE_THREAD };
    const { status, stdout } = spawnSync(python, ['-c', program], { encoding: 'utf8', input, env });
    const told: unknown = status === 0 ? JSON.parse(stdout) : undefined;
    if (told !== undefined) return told;
  }
  return undefined;
}
