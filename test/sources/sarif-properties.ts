/**
 * Publisher: OASIS. Document: Static Analysis Results Interchange Format (SARIF) Version 2.1.0, JSON schema, as
 * its property names stand in the type definitions made from it (DefinitelyTyped, sarif 2.1.7, read 2026-11-25).
 * Columns: object of the format; every property it may have; those it must have.
 */
export const sarifProperties: Readonly<Record<string, readonly [may: string, must: string]>> = {
  log: ['$schema inlineExternalProperties properties runs version', 'version runs'],
  run: [
    'addresses artifacts automationDetails baselineGuid columnKind conversion defaultEncoding defaultSourceLanguage externalPropertyFileReferences graphs invocations language logicalLocations newlineSequences originalUriBaseIds policies properties redactionTokens results runAggregates specialLocations taxonomies threadFlowLocations tool translations versionControlProvenance webRequests webResponses',
    'tool',
  ],
  tool: ['driver extensions properties', 'driver'],
  toolComponent: [
    'associatedComponent contents dottedQuadFileVersion downloadUri fullDescription fullName globalMessageStrings guid informationUri isComprehensive language localizedDataSemanticVersion locations minimumRequiredLocalizedDataSemanticVersion name notifications organization product productSuite properties releaseDateUtc rules semanticVersion shortDescription supportedTaxonomies taxa translationMetadata version',
    'name',
  ],
  reportingDescriptor: [
    'defaultConfiguration deprecatedGuids deprecatedIds deprecatedNames fullDescription guid help helpUri id messageStrings name properties relationships shortDescription',
    'id',
  ],
  reportingConfiguration: ['enabled level parameters properties rank', ''],
  multiformatMessageString: ['markdown properties text', 'text'],
  result: [
    'analysisTarget attachments baselineState codeFlows correlationGuid fingerprints fixes graphTraversals graphs guid hostedViewerUri kind level locations message occurrenceCount partialFingerprints properties provenance rank relatedLocations rule ruleId ruleIndex stacks suppressions taxa webRequest webResponse workItemUris',
    'message',
  ],
  suppression: ['guid justification kind location properties status', 'kind'],
  invocation: [
    'account arguments commandLine endTimeUtc environmentVariables executableLocation executionSuccessful exitCode exitCodeDescription exitSignalName exitSignalNumber machine notificationConfigurationOverrides processId processStartFailureMessage properties responseFiles ruleConfigurationOverrides startTimeUtc stderr stdin stdout stdoutStderr toolConfigurationNotifications toolExecutionNotifications workingDirectory',
    'executionSuccessful',
  ],
  notification: [
    'associatedRule descriptor exception level locations message properties threadId timeUtc',
    'message',
  ],
  message: ['arguments id markdown properties text', ''],
  location: ['annotations id logicalLocations message physicalLocation properties relationships', ''],
  physicalLocation: ['address artifactLocation contextRegion properties region', ''],
  artifactLocation: ['description index properties uri uriBaseId', ''],
  region: [
    'byteLength byteOffset charLength charOffset endColumn endLine message properties snippet sourceLanguage startColumn startLine',
    '',
  ],
  logicalLocation: ['decoratedName fullyQualifiedName index kind name parentIndex properties', ''],
};
