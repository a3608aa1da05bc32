import { z } from 'zod';

/** Security policies of OPC 10000-7 that are offered; those that are deprecated for their SHA-1 are not. */
export const SECURITY_POLICIES = ['None', 'Basic256Sha256', 'Aes128_Sha256_RsaOaep', 'Aes256_Sha256_RsaPss'] as const;
export const SECURITY_MODES = ['None', 'Sign', 'SignAndEncrypt'] as const;

/** How a joining system is reached. */
export const opcUaSettingsSchema = z
  .strictObject({
    endpointUrl: z.string().regex(/^opc\.tcp:\/\/[^\s/]+(\/\S*)?$/, 'an address such as opc.tcp://192.168.10.20:4840'),
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
export type OpcUaSettings = z.infer<typeof opcUaSettingsSchema>;
