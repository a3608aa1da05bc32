import { Command, Option } from 'commander';
import { FAULTS, FORMATS, LANGUAGES, MODES, PAPERS } from './choices.ts';
import { figure, wholeNumber } from './figures.ts';
import { outliveReader, runs } from './runs.ts';
import { failureJson } from './say.ts';

/* Every command with its options. A command loads its rooms when it runs, so that a calculation starts without the server. */

outliveReader(process.stdout);

const program = new Command('clampwright')
  .description('Tighten critical threaded joints by hand with torque-and-angle wrenches, and prove it.')
  .version('0.1.0')
  .showHelpAfterError('(clampwright --help tells how it is used)')
  .exitOverride(({ exitCode }) => process.exit(exitCode === 0 ? 0 : 2));

const data = new Option(
  '--data <folder>',
  'data folder; left out: the user’s data directory by the platform’s convention',
);
const json = new Option('--json', 'answer in JSON');

program
  .command('calc')
  .argument('[name]', 'a calculation; left out: all are listed')
  .description('calculate: JSON on standard input, JSON on standard output; an array in gives an array out')
  .addOption(data)
  .option('--input <json>', 'the input, instead of standard input')
  .option('--schema', 'show what the calculation takes and gives, as JSON Schema')
  .action(runs(async () => (await import('./commands/calc.ts')).calc, failureJson));

program
  .command('serve')
  .description('serve the workshop on this machine until interrupted')
  .addOption(data)
  .option(
    '--port <number>',
    'port on 127.0.0.1; left out: 4700, or a free one if that is taken',
    wholeNumber(0, 65_535),
  )
  .option('--no-demo', 'do not load the invented demonstration on the first start')
  .option('--watch <folder>', 'set this folder up as a device whose files are taken, on this start and every later one')
  .option('--mapping <name>', 'with --watch: the saved mapping by which its files are read')
  .option('--wrench <serial>', 'with --watch: serial number of the wrench whose files they are')
  .action(runs(async () => (await import('./commands/serve.ts')).serve));

const record = program.command('record').description('records: export, verify, the key that seals them');
record
  .command('export')
  .argument('<job>', 'id of a job, see `clampwright jobs`')
  .description('write the record of a job to a file; of an open job without a seal')
  .addOption(data)
  .addOption(new Option('--format <format>').choices(FORMATS).default('json'))
  .option('--out <file>', 'where to, - for standard output; left out: a name made from the job, in this folder')
  .addOption(new Option('--language <language>').choices(LANGUAGES).default('en'))
  .addOption(new Option('--paper <paper>').choices(PAPERS).default('A4'))
  .action(runs(async () => (await import('./commands/record-export.ts')).exportJob));
record
  .command('verify')
  .argument('<file>', 'an exported record')
  .description('verify a record with nothing but the file: whole, or what exactly was altered')
  .addOption(json)
  .option('--key <fingerprint>', 'refuse a record that was not sealed with the key of this fingerprint')
  .action(runs(async () => (await import('./commands/record-verify.ts')).verify));
record
  .command('key')
  .description('show the public key of this workshop and its fingerprint, to be given to whoever verifies')
  .addOption(data)
  .addOption(json)
  .action(runs(async () => (await import('./commands/record-key.ts')).showKey));

const pulls = program.command('pulls').description('pulls from files');
pulls
  .command('import')
  .argument('<file>', 'a CSV file of any layout')
  .description('take pulls from a file into a job; the same file twice adds nothing')
  .requiredOption('--job <id>', 'job that the pulls belong to, see `clampwright jobs`')
  .requiredOption('--mapping <mapping>', 'how the file is read: name of a saved mapping, or a JSON file')
  .requiredOption('--as <person>', 'who takes them in: name or id of a technician or lead')
  .option('--joint <ref>', 'joint of the job such as J1, where neither the file nor the job tells')
  .addOption(new Option('--mode <mode>', 'what is kept').choices(MODES).default('all-or-nothing'))
  .addOption(data)
  .addOption(json)
  .action(runs(async () => (await import('./commands/pulls-import.ts')).importPulls));

program
  .command('jobs')
  .description('list the jobs, the one last worked on first')
  .addOption(data)
  .addOption(json)
  .action(runs(async () => (await import('./commands/jobs.ts')).listJobs));

program
  .command('devices')
  .description('list the devices with what they have told')
  .addOption(data)
  .addOption(json)
  .action(runs(async () => (await import('./commands/devices.ts')).listDevices));

const demo = program.command('demo').description('the invented demonstration');
demo
  .command('load')
  .description('load it')
  .addOption(data)
  .action(runs(async () => (await import('./commands/demo.ts')).load));
demo
  .command('remove')
  .description('remove it, and nothing else')
  .addOption(data)
  .action(runs(async () => (await import('./commands/demo.ts')).remove));

const wrench = program.command('wrench').description('the simulated wrench');
wrench
  .command('simulate')
  .description('speak as a wrench over a pseudo-terminal, pull after pull; tells the port to connect to')
  .option('--torque <N·m>', 'target', figure('a torque above 0', 'above 0'), 100)
  .option('--angle <deg>', 'angle after the threshold', figure('an angle above 0', 'above 0'))
  .option(
    '--from <N·m>',
    'threshold from which the angle counts; left out: half the target',
    figure('a torque from 0', 'from 0'),
  )
  .addOption(new Option('--fault <fault>', 'what goes wrong with every pull').choices(FAULTS).default('none'))
  .option('--pulls <number>', 'how many; left out: until interrupted', wholeNumber(1, 1_000_000))
  .option('--pause <seconds>', 'before each pull, and after the last', figure('seconds from 0', 'from 0'), 3)
  .option('--seed <number>', 'seed of its chance', wholeNumber(0, 1_000_000), 1)
  .option('--link <path>', 'name under which the port is found each time')
  .action(runs(async () => (await import('./commands/wrench-simulate.ts')).simulate));

await program.parseAsync();
