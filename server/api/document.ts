import { z } from 'zod';
import { SESSION_COOKIE } from '../guard/session.ts';
import { type Route, shapeOf } from './route.ts';
import { type Shape, type Shapes, shapes } from './shapes.ts';

export const API_ROOT = '/api/v1';

/**
 * The OpenAPI 3.1 document of these routes.
 *
 * @source OpenAPI Specification 3.1.1
 */
export function openApi(routes: readonly Route[]): Shape {
  const made = shapes();
  const paths: Record<string, Record<string, Shape>> = {};
  for (const route of routes) (paths[API_ROOT + route.path] ??= {})[route.method] = operation(route, made);
  return {
    openapi: '3.1.1',
    info: {
      title: 'Clampwright',
      version: '1',
      description:
        'Tightening of critical threaded joints by hand. Figures derived here are estimates: the maker’s instructions and local codes come first.',
    },
    servers: [{ url: '/' }],
    paths,
    components: {
      schemas: made.componentsFor(paths),
      securitySchemes: { session: { type: 'apiKey', in: 'cookie', name: SESSION_COOKIE } },
    },
  };
}

function operation(route: Route, made: Shapes): Shape {
  const { params, query } = shapeOf(route.takes);
  const body = bodyOf(route, made);
  return {
    operationId: `${route.method}${route.path.replaceAll(/[^a-z0-9]+([a-z0-9]?)/gi, (_, next: string) => next.toUpperCase())}`,
    summary: route.title.charAt(0).toUpperCase() + route.title.slice(1),
    tags: [route.path.split(/[/.]/)[1]],
    ...(route.roles === 'anybody'
      ? {}
      : { description: `For the role ${route.roles.join(' or ')}.`, security: [{ session: [] }] }),
    parameters: [...parameters('path', params, made), ...parameters('query', query, made)],
    ...(body ? { requestBody: { required: true, content: body } } : {}),
    responses: responses(route, made),
  };
}

function parameters(place: 'path' | 'query', schema: z.core.$ZodType | undefined, made: Shapes): readonly Shape[] {
  if (!(schema instanceof z.ZodObject)) return [];
  return Object.entries(schema.shape).map(([name, field]) => ({
    name,
    in: place,
    required: place === 'path' || !z.safeParse(field, undefined).success,
    schema: made.sent(field),
  }));
}

function bodyOf(route: Route, made: Shapes): Shape | undefined {
  if (route.streams)
    return Object.fromEntries(route.streams.map((type) => [type, { schema: { type: 'string', format: 'binary' } }]));
  const schema = route.bodyShown ?? shapeOf(route.takes).body;
  return schema ? { 'application/json': { schema: made.sent(schema) } } : undefined;
}

function responses(route: Route, made: Shapes): Shape {
  const content = Object.entries(route.gives.content).map(([type, schema]) => [
    type,
    { schema: made.answered(schema) },
  ]);
  const problem = {
    description: 'Refused',
    content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
  };
  return {
    [route.gives.status]: {
      description: 'Done',
      ...(content.length > 0 ? { content: Object.fromEntries(content) } : {}),
    },
    '4XX': problem,
    '5XX': problem,
  };
}
