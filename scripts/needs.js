import { spawnSync } from 'node:child_process';

/** Programs outside npm that the tests drive, and Debian's package for each. */
const PROGRAMS = [
  { program: 'chromium', debian: 'chromium', why: 'the browser tests' },
  { program: 'socat', debian: 'socat', why: 'the tests over a real pseudo-terminal' },
  { program: 'pdftotext', debian: 'poppler-utils', why: 'the tests that read the PDF back' },
  { program: 'qpdf', debian: 'qpdf', why: 'the tests of the structure of the PDF' },
  { program: 'zbarimg', debian: 'zbar-tools', why: 'the test that reads the barcode back' },
  { program: 'curl', debian: 'curl', why: 'the examples of docs/' },
  { program: 'jq', debian: 'jq', why: 'the examples of docs/' },
  { program: 'openssl', debian: 'openssl', why: 'the examples of docs/' },
  { program: 'python3', debian: 'python3', why: 'the examples of docs/' },
];

const isThere = (program) => spawnSync('sh', ['-c', `command -v ${program}`]).status === 0;
const quiet = (command, args) =>
  spawnSync(command, args, {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  }).status === 0;

/** Installs what is missing through apt where it may; otherwise says in one line what to install, and ends. */
export function needs() {
  const missing = PROGRAMS.filter(({ program }) => !isThere(program));
  if (missing.length === 0) return;
  const packages = missing.map(({ debian }) => debian);
  if (isThere('apt-get') && process.getuid?.() === 0) {
    process.stderr.write(`── installing ${packages.join(', ')} through apt (a minute or two)\n`);
    if (
      quiet('apt-get', ['update', '-qq']) &&
      quiet('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages])
    )
      return;
  }
  const list = missing.map(({ debian, why }) => `${debian} (${why})`).join(', ');
  process.stderr.write(`Please install: ${list}. On Debian: sudo apt-get install ${packages.join(' ')}\n`);
  process.exit(1);
}
