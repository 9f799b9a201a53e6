package hingewise.casefile.store;

import hingewise.casefile.CaseFile;

/**
 * A case as it lies on disk.
 *
 * @param digest SHA-256 of the bytes of the file, in hexadecimal
 */
public record Stored(CaseFile caseFile, String digest) {}
