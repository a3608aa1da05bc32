import { z } from 'zod';

/** Security policies of OPC 10000-7 that are offered; those that are deprecated for their SHA-1 are not. */
export const SECURITY_POLICIES = ['None', 'Basic256Sha256', 'Aes128_Sha256_RsaOaep', 'Aes256_Sha256_RsaPss'] as const;
export const SECURITY_MODES = ['None', 'Sign', 'SignAndEncrypt'] as const;

const serialWaySchema = z.strictObject({
  kind: z.literal('serial'),
  /** Such as `/dev/ttyUSB0` or `COM3`. */
  path: z.string().trim().min(1).max(250),
  baudRate: z.number().int().min(300).max(4_000_000).default(115_200),
  /** Name of the line description by which its lines are read. */
  lines: z.string().min(1).max(100),
});

/** How a joining system is reached. */
export const opcUaWaySchema = z
  .strictObject({
    kind: z.literal('opc-ua'),
    endpointUrl: z
      .string()
      .trim()
      .regex(/^opc\.tcp:\/\/[^\s/]+(\/\S*)?$/, 'an address such as opc.tcp://192.168.10.20:4840'),
    securityMode: z.enum(SECURITY_MODES).default('SignAndEncrypt'),
    securityPolicy: z.enum(SECURITY_POLICIES).default('Basic256Sha256'),
    /** Left out: anonymous. */
    userName: z.string().min(1).max(100).optional(),
    password: z.string().max(200).optional(),
    /** SHA-256 of the server's certificate that somebody has looked at and trusts, in hexadecimal. */
    trustedCertificate: z
      .string()
      .regex(/^[0-9a-f]{64}$/, 'SHA-256 in hexadecimal')
      .optional(),
  })
  .superRefine(({ securityMode, securityPolicy, userName, password }, context) => {
    if ((securityMode === 'None') !== (securityPolicy === 'None'))
      context.addIssue({ code: 'custom', path: ['securityPolicy'], message: 'none with no security, another with it' });
    if (password !== undefined && userName === undefined)
      context.addIssue({ code: 'custom', path: ['userName'], message: 'the name that the password belongs to' });
  });
export type OpcUaWay = z.infer<typeof opcUaWaySchema>;

const httpWaySchema = z.strictObject({ kind: z.literal('http') });

const folderWaySchema = z.strictObject({
  kind: z.literal('folder'),
  /** A folder of this machine. */
  path: z.string().trim().min(1).max(1000),
  /** Name of the mapping by which its files are read. */
  mapping: z.string().min(1).max(100),
});

/** By which way pulls arrive. */
export const wayInSchema = z.discriminatedUnion('kind', [
  serialWaySchema,
  opcUaWaySchema,
  httpWaySchema,
  folderWaySchema,
]);
export type WayIn = z.infer<typeof wayInSchema>;

/** Something that tells pulls by itself, as it is set up here. */
export const deviceSchema = z
  .strictObject({
    id: z.uuid(),
    name: z.string().trim().min(1).max(100),
    /** The wrench whose pulls it tells; left out: each pull names its wrench by the serial number. */
    wrenchId: z.uuid().optional(),
    way: wayInSchema,
  })
  .refine(({ way, wrenchId }) => way.kind !== 'folder' || wrenchId !== undefined, {
    path: ['wrenchId'],
    error: 'the wrench whose files they are',
  });
export type Device = z.infer<typeof deviceSchema>;
