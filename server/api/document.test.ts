import { CALCULATIONS } from '@clampwright/core/calculations';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type Workshop, workshop } from '../testing/workshop.ts';
import { API_ROOT } from './document.ts';
import { ROUTES } from './routes.ts';

const operationSchema = z.looseObject({
  operationId: z.string(),
  summary: z.string(),
  responses: z.record(z.string(), z.unknown()),
});
const documentSchema = z.looseObject({
  openapi: z.string(),
  paths: z.record(z.string(), z.record(z.string(), operationSchema)),
  components: z.looseObject({ schemas: z.record(z.string(), z.unknown()) }),
});

let shop: Workshop;
let document: z.infer<typeof documentSchema>;
beforeAll(async () => {
  shop = await workshop();
  document = documentSchema.parse((await shop.ask('GET', '/openapi.json')).body);
});
afterAll(() => shop.close());

const described = (): readonly string[] =>
  Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => `${method} ${path}`),
  );

describe('the OpenAPI document', () => {
  it('is of version 3.1', () => {
    expect(document.openapi).toMatch(/^3\.1\./);
  });

  it('describes every route that the app answers, and no other', () => {
    const answered = shop.app.routes.filter(({ method, path }) => method !== 'ALL' && path.startsWith(API_ROOT));
    expect(described().toSorted()).toEqual(
      answered.map(({ method, path }) => `${method.toLowerCase()} ${path.replaceAll(/:(\w+)/g, '{$1}')}`).toSorted(),
    );
  });

  it.each(ROUTES.map(({ method, path }) => [method, path] as const))(
    '%s %s answers with something else than an unknown route',
    async (method, path) => {
      const { status, body } = await shop.ask(
        method.toUpperCase(),
        path.replaceAll(/\{\w+\}/g, '01991f3c-0000-7000-8000-000000000000'),
      );
      expect(JSON.stringify(body ?? '')).not.toContain('There is no route');
      expect(status).toBeLessThan(500);
    },
  );

  it('has one path for each calculation', () => {
    expect(described()).toEqual(expect.arrayContaining(CALCULATIONS.map(({ name }) => `post /api/v1/calc/${name}`)));
  });

  it('gives every operation its own name', () => {
    const ids = Object.values(document.paths).flatMap((methods) =>
      Object.values(methods).map(({ operationId }) => operationId),
    );
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('refers to nothing that it does not contain, and contains nothing that is not referred to', () => {
    const refs = [...JSON.stringify(document).matchAll(/"\$ref":"#\/components\/schemas\/([^"]+)"/g)].map(
      (match) => match[1] ?? '',
    );
    expect([...new Set(refs)].toSorted()).toEqual(Object.keys(document.components.schemas).toSorted());
  });
});
