import type { ImportQuery, ImportResult } from '@clampwright/server/contract';
import { queryOptions, useMutation, useQueryClient } from '@tanstack/react-query';
import { anything, get, having, listOf, send, sendFile } from '../app/api.ts';
import { useWho } from '../app/who.tsx';
import { catchUp } from '../jobs/job-query.ts';
import type { Guess, Mapping } from './mapping.ts';

/** What the server looks at to propose a mapping. */
const HEAD_BYTES = 256 * 1024;

const isGuess = having<Guess>('mapping', 'doubts', 'rows');
const isMapping = having<Mapping>('name', 'torque', 'headerRow');
const isResult = having<ImportResult>('lines', 'pulls', 'added', 'refused', 'preview');

export const mappingsQuery = queryOptions({
  queryKey: ['mappings'],
  queryFn: () => get('/mappings', listOf(isMapping)),
});

/** Proposes how a file is to be read, by its beginning. */
export const useGuess = () =>
  useMutation({
    mutationFn: ({ file, zone }: { readonly file: File; readonly zone: string }) =>
      sendFile(`/mappings/guess?${new URLSearchParams({ zone })}`, file.slice(0, HEAD_BYTES), isGuess),
  });

export function useSaveMapping() {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (mapping: Mapping) => send('POST', '/mappings', mapping, anything),
    onSuccess: () => queries.invalidateQueries({ queryKey: mappingsQuery.queryKey }),
  });
}

export interface FileToTake {
  readonly file: File;
  readonly mapping: Mapping;
  readonly mode: ImportQuery['mode'];
  /** Joint of lines that name none. */
  readonly joint: string | undefined;
}

/** Reads a file into a job, or shows what reading it would do. Undefined: nobody wanted to say who is working. */
export function useTakeFile(jobId: string) {
  const queries = useQueryClient();
  const who = useWho();
  return useMutation({
    mutationFn: async ({ file, mapping, mode, joint }: FileToTake) => {
      if (!(await who.ask())) return undefined;
      const query = new URLSearchParams({
        mode,
        mapping: JSON.stringify(mapping),
        fileName: file.name,
        ...(joint === undefined ? {} : { joint }),
      });
      return sendFile(`/jobs/${jobId}/imports?${query}`, file, isResult);
    },
    onSuccess: async (result) => {
      if (result && result.added > 0) await catchUp(queries, jobId);
    },
  });
}
