/* node-opcua is CommonJS: its names are had through the default import only, so they are unpacked here once. */
import certificates from 'node-opcua-certificate-manager';
import client from 'node-opcua-client';

export const { OPCUACertificateManager } = certificates;
export const {
  AttributeIds,
  browseAll,
  constructEventFilter,
  DataType,
  getExtraDataTypeManager,
  MessageSecurityMode,
  OPCUAClient,
  ofType,
  resolveDynamicExtensionObject,
  SecurityPolicy,
  TimestampsToReturn,
  UserTokenType,
  Variant,
  VariantArrayType,
} = client;

// Whatever matters is told as an event; the library would print it as well.
client.setLogLevel(client.LogLevel.Critic);
