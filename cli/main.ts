import { Command } from 'commander';

const program = new Command('clampwright')
  .description('Tighten critical threaded joints by hand with torque-and-angle wrenches, and prove it.')
  .version('0.1.0')
  .showHelpAfterError('(clampwright --help tells how it is used)')
  .exitOverride((error) => process.exit(error.exitCode === 0 ? 0 : 2));

// Each command loads its rooms when it runs, so that a calculation starts without the server.
program
  .command('calc')
  .argument('[name]', 'a calculation; without it all are listed')
  .description('calculate: JSON on standard input, JSON on standard output; an array in gives an array out')
  .option('--input <json>', 'the input, instead of standard input')
  .option('--schema', 'show what the calculation takes and gives, as JSON Schema')
  .action(async (name: string | undefined, options: { input?: string; schema?: boolean }) => {
    const { calc } = await import('./commands/calc.ts');
    await calc(name, options);
  });

program
  .command('serve')
  .description('serve the workshop on this machine')
  .option('--data <folder>', 'data folder; default: the user’s data directory by convention of the platform')
  .option('--port <number>', 'port on 127.0.0.1; default: 4700, or a free one if that is taken')
  .option('--no-demo', 'do not load the invented demonstration on the first start')
  .action(async (options: { data?: string; port?: string; demo: boolean }) => {
    const { serve } = await import('./commands/serve.ts');
    await serve(options);
  });

const record = program.command('record').description('records: verify and export');
record
  .command('verify')
  .argument('<file>', 'an exported record')
  .description('verify a record with nothing but the file: whole, or what exactly was altered')
  .option('--json', 'answer in JSON')
  .option('--key <fingerprint>', 'refuse a record that was not sealed with the key of this fingerprint')
  .action(async (file: string, options: { json?: boolean; key?: string }) => {
    const { verify } = await import('./commands/record.ts');
    await verify(file, options);
  });
record
  .command('export')
  .argument('<job>', 'id of a job, see `clampwright jobs`')
  .description('write the record of a job to a file')
  .option('--data <folder>', 'data folder')
  .option('--format <format>', 'json, pdf, html or csv', 'json')
  .option('--out <file>', 'where to; default: a name made from the job, in this folder')
  .option('--language <language>', 'en, de, fr or es', 'en')
  .action(async (job: string, options: { data?: string; format: string; out?: string; language: string }) => {
    const { exportJob } = await import('./commands/export.ts');
    await exportJob(job, options);
  });

const pulls = program.command('pulls').description('pulls from files');
pulls
  .command('import')
  .argument('<file>', 'a CSV file of any layout')
  .description('take pulls from a file into a job; the same file twice adds nothing')
  .requiredOption('--job <id>', 'job that the pulls belong to')
  .requiredOption('--mapping <mapping>', 'name of a saved mapping, or a JSON file')
  .requiredOption('--as <person>', 'who takes them in: name or id of a technician or lead')
  .option('--joint <ref>', 'joint of the job, where neither the file nor the job tells')
  .option('--mode <mode>', 'preview, all-or-nothing or good-lines', 'all-or-nothing')
  .option('--data <folder>', 'data folder')
  .action(
    async (
      file: string,
      options: { job: string; mapping: string; as: string; joint?: string; mode: string; data?: string },
    ) => {
      const { importPulls } = await import('./commands/pulls.ts');
      await importPulls(file, options);
    },
  );

program
  .command('jobs')
  .description('list the jobs')
  .option('--data <folder>', 'data folder')
  .option('--json', 'answer in JSON')
  .action(async (options: { data?: string; json?: boolean }) => {
    const { listJobs } = await import('./commands/jobs.ts');
    await listJobs(options);
  });

const demo = program.command('demo').description('the invented demonstration');
for (const action of ['load', 'remove'] as const) {
  demo
    .command(action)
    .description(action === 'load' ? 'load it' : 'remove it, and nothing else')
    .option('--data <folder>', 'data folder')
    .action(async (options: { data?: string }) => {
      const commands = await import('./commands/demo.ts');
      await commands[action](options);
    });
}

const wrench = program.command('wrench').description('the simulated wrench');
wrench
  .command('simulate')
  .description('speak as a wrench over a pseudo-terminal until interrupted; prints the port to connect to')
  .option('--torque <N·m>', 'target', '100')
  .option('--angle <deg>', 'angle after the threshold')
  .option('--from <N·m>', 'threshold from which angle is counted')
  .option('--fault <fault>', 'what goes wrong with every pull', 'none')
  .option('--pulls <number>', 'how many pulls', '10')
  .option('--pause <seconds>', 'between two pulls', '3')
  .option('--seed <number>', 'seed of its chance', '1')
  .action(
    async (options: {
      torque: string;
      angle?: string;
      from?: string;
      fault: string;
      pulls: string;
      pause: string;
      seed: string;
    }) => {
      const { simulate } = await import('./commands/wrench.ts');
      await simulate(options);
    },
  );

await program.parseAsync();
