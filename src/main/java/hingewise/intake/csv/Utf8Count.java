package hingewise.intake.csv;

/**
 * Counts what is UTF-8 and what is not in bytes that come in pieces. Follows RFC 3629 but for surrogates and overlong
 * forms of three and four bytes, which no other encoding writes by accident.
 */
final class Utf8Count {
    private int awaited;
    private long good;
    private long wrong;
    private long line = 1;
    private long firstWrongLine;

    void add(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            add(bytes[i]);
        }
    }

    private void add(byte b) {
        if (b >= 0) {
            endSequence();
            if (b == '\n') {
                line++;
            }
        } else if ((b & 0xC0) == 0x80) {
            if (awaited == 0) {
                miss();
            } else if (--awaited == 0) {
                good++;
            }
        } else {
            endSequence();
            awaited = following(b & 0xFF);
            if (awaited == 0) {
                miss();
            }
        }
    }

    /** How many bytes follow this first one of a sequence; 0 if it cannot be one. */
    private static int following(int first) {
        if (first < 0xC2 || first > 0xF4) {
            return 0;
        }
        return first < 0xE0 ? 1 : first < 0xF0 ? 2 : 3;
    }

    void end() {
        endSequence();
    }

    private void endSequence() {
        if (awaited > 0) {
            awaited = 0;
            miss();
        }
    }

    private void miss() {
        wrong++;
        if (firstWrongLine == 0) {
            firstWrongLine = line;
        }
    }

    /** Characters of more than one byte that are whole. */
    long good() {
        return good;
    }

    /** Bytes and beginnings that are no character. */
    long wrong() {
        return wrong;
    }

    /** From 1; 0 when there is none. */
    long firstWrongLine() {
        return firstWrongLine;
    }
}
